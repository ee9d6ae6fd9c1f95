package tuttarco.playback;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import tuttarco.files.InputException;
import tuttarco.video.ClipFacts;
import tuttarco.video.ClipPictures;
import tuttarco.video.ClipSound;
import tuttarco.video.SlowedSound;

/**
 * Plays a clip: its pictures go to a {@link Sink} when the sound has come to their time. Orders return at once and are
 * carried out on the player's own threads, so they may come from any thread; an order that is overtaken by the next is
 * left out.
 *
 * <p>Every order begins a new {@link Run}. One thread draws its pictures ahead ({@link Drawer}), one gives its sound
 * ({@link Feeder}), and the third, the director, takes the orders and shows each picture when the clock, which is the sound
 * that was heard, has come to it.
 */
public final class ClipPlayer implements AutoCloseable {
    private static final int THREADS = 3;

    /** Pictures this far behind the sound will not catch up on this computer: both begin anew; seconds (chosen). */
    private static final double LOST_S = 1;

    /**
     * A picture is handed over so much before the sound has come to its time, for it is seen later; seconds played (half of the
     * pictures of a usual window were painted 8 ms or less after they were handed over, PlaybackBenchmark, 2026-11-26).
     */
    private static final double AHEAD_S = 0.008;

    private final Sink sink;
    private final Clock clock;
    private final ClipFacts facts;
    private final Optional<String> soundNote;
    private final Handing toDraw = new Handing();
    private final Handing toFeed = new Handing();
    private final Drawer drawer;
    private final Optional<Feeder> feeder;
    private final CountDownLatch left = new CountDownLatch(THREADS);
    private final Object orders = new Object();
    private final Object showing = new Object();

    /** What is ordered, guarded by {@link #orders}. */
    private boolean ordered = true;

    private Optional<Double> wantedS = Optional.empty();
    private int steps;
    private boolean playing;
    private boolean atEnd;
    private double speed = 1;
    private Optional<Loop> loop = Optional.empty();

    /** Set by the director. */
    private volatile Run run = Run.still(0, 0);

    private volatile boolean started;
    private volatile double timeS;
    private volatile Counts counts = new Counts(0, 0, 0);
    private Optional<BufferedImage> seen = Optional.empty();
    private long droppedLate;
    private boolean moved;

    private volatile boolean closed;

    private ClipPlayer(ClipPictures pictures, Optional<ClipSound> sound, Sink sink, Clock clock) {
        this.sink = sink;
        this.clock = clock;
        facts = pictures.facts();
        drawer = new Drawer(pictures, clock, toDraw);
        feeder = clock instanceof SoundOut out ? Optional.of(new Feeder(out, sound, toFeed)) : Optional.empty();
        if (sound.isEmpty()) {
            soundNote = Optional.of("This clip has no sound.");
        } else if (feeder.isEmpty()) {
            soundNote = Optional.of("Nothing is heard, because this computer has no sound output that is free.");
        } else {
            soundNote = Optional.empty();
        }
    }

    /**
     * Opens a clip, standing still at its first picture, which the sink gets soon. This may take a while: not for a
     * window's thread.
     *
     * @throws InputException if there is no such file or it is not a video that can be read
     */
    public static ClipPlayer open(Path video, Sink sink) throws InputException {
        return open(video, sink, SoundCard.open().map(Clock.class::cast).orElseGet(SteadyClock::new));
    }

    /** Opens a clip that goes by a clock, and is heard if that is a {@link SoundOut}. */
    static ClipPlayer open(Path video, Sink sink, Clock clock) throws InputException {
        ClipPictures pictures = null;
        try {
            pictures = ClipPictures.open(video);
            Optional<ClipSound> sound = ClipSound.open(pictures.facts());
            ClipPlayer player = new ClipPlayer(pictures, sound, sink, clock);
            player.begin();
            return player;
        } catch (InputException e) {
            if (pictures != null) {
                pictures.close();
            }
            clock.close();
            throw e;
        }
    }

    private void begin() {
        work("tuttarco-pictures", drawer::work);
        if (feeder.isPresent()) {
            work("tuttarco-sound", feeder.get()::work);
        } else {
            left.countDown();
        }
        work("tuttarco-shows", this::direct);
    }

    @FunctionalInterface
    private interface Work {
        void done() throws InterruptedException;
    }

    private void work(String name, Work work) {
        Thread thread = new Thread(
                () -> {
                    try {
                        work.done();
                    } catch (InterruptedException e) {
                        // nobody interrupts it but to end the program
                    } finally {
                        left.countDown();
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Plays on from where the clip stands; from its start, or the loop's, where it stands at the end. */
    public void play() {
        order(() -> {
            if (!playing) {
                playing = true;
                if (atEnd) {
                    wantedS = Optional.of(loop.map(Loop::fromS).orElse(0.0));
                }
                ordered = true;
            }
        });
    }

    /** Stands still at the picture that is seen. */
    public void pause() {
        order(() -> {
            ordered |= playing;
            playing = false;
        });
    }

    public boolean playing() {
        synchronized (orders) {
            return playing;
        }
    }

    /** Goes to the picture that is seen at a time, seconds of the clip, and plays on from there if it was playing. */
    public void seek(double timeS) {
        order(() -> {
            wantedS = Optional.of(Math.max(0, timeS));
            steps = 0;
            ordered = true;
        });
    }

    /** Stands still so many pictures later, or earlier if negative. */
    public void step(int pictures) {
        order(() -> {
            steps += pictures;
            playing = false;
            ordered = true;
        });
    }

    /** How fast it is played, 1 as it was filmed; the pitch stays. From 0.25 to 1. */
    public void speed(double factor) {
        if (!(factor >= SlowedSound.SLOWEST && factor <= 1)) {
            throw new IllegalArgumentException(
                    "a clip is played at " + SlowedSound.SLOWEST + " to 1 of its speed, not at " + factor);
        }
        order(() -> {
            speed = factor;
            ordered |= playing;
        });
    }

    public double speed() {
        synchronized (orders) {
            return speed;
        }
    }

    /** Plays a stretch again and again, or no longer. */
    public void loop(Optional<Loop> stretch) {
        order(() -> {
            loop = stretch;
            ordered |= playing;
        });
    }

    public Optional<Loop> loop() {
        synchronized (orders) {
            return loop;
        }
    }

    /** Has ticks heard over the sound at these times; none if empty. */
    public void clicks(List<Click> clicks) {
        feeder.ifPresent(f -> f.ticks(new Ticks(clicks)));
    }

    /** What is wanted of the pictures: as large as fits into this many pixels, the sides in the clip's proportion. */
    public void fit(int widthPx, int heightPx) {
        drawer.fit(widthPx, heightPx);
        order(() -> ordered |= !playing);
    }

    private void order(Runnable change) {
        synchronized (orders) {
            change.run();
            orders.notifyAll();
        }
    }

    /** Time of the picture that was shown last, seconds of the clip. */
    public double timeS() {
        return timeS;
    }

    /** Where the sound is, seconds of the clip; while it stands still, the picture's time. */
    public double soundS() {
        Run now = run;
        return now.moving() && started ? now.course().clipS(clock.playedS() * now.speed()) : timeS;
    }

    public ClipFacts facts() {
        return facts;
    }

    public Counts counts() {
        return counts;
    }

    /** What the user should know about how this clip is heard or seen, in one sentence: no sound, a damaged end. */
    public Optional<String> note() {
        return drawer.trouble()
                .or(() -> clock instanceof SoundOut out ? out.trouble() : Optional.empty())
                .or(() -> soundNote);
    }

    /** The director's work. */
    private void direct() throws InterruptedException {
        try {
            while (!closed) {
                if (takeOrders()) {
                    showNext();
                }
            }
        } finally {
            end(run);
            toDraw.close();
            toFeed.close();
            clock.close();
        }
    }

    /** Begins a new run if something was ordered; waits until something is if there is nothing to do; false if closed. */
    private boolean takeOrders() throws InterruptedException {
        boolean stops;
        synchronized (orders) {
            while (!ordered && !run.moving() && started && !closed) {
                orders.wait();
            }
            if (!ordered) {
                return !closed;
            }
            ordered = false;
            if (wantedS.isEmpty() && !started) {
                // an order that was not yet carried out
                steps += run.steps();
            }
            double fromS = wantedS.orElseGet(this::placeS);
            wantedS = Optional.empty();
            atEnd = false;
            stops = moved && !playing;
            moved = playing;
            begin(playing ? Run.moving(Course.from(fromS, loop), speed) : Run.still(fromS, steps));
            steps = 0;
        }
        if (stops) {
            stopped();
        }
        return true;
    }

    /** Where the clip stands, or would if what was ordered had been carried out. */
    private double placeS() {
        if (!started) {
            return run.course().clipBeginS(0);
        }
        return playing ? soundS() : timeS;
    }

    private void begin(Run next) {
        end(run);
        started = false;
        run = next;
        toDraw.hand(next);
        toFeed.hand(next);
    }

    private void end(Run old) {
        for (Run.Due due : old.end()) {
            if (due instanceof Run.Shown shown) {
                drawer.back(shown.picture());
            }
        }
        clock.halt();
    }

    private void showNext() throws InterruptedException {
        Optional<Run.Due> next = run.next();
        if (next.isEmpty()) {
            return;
        }
        if (!started) {
            begin(next.get());
            return;
        }
        double dueS = next.get().playedS() - (next.get() instanceof Run.Shown ? AHEAD_S : 0);
        clock.await(dueS);
        double playedS = clock.playedS();
        if (playedS < dueS) {
            return;
        }
        if (next.get() instanceof Run.Shown shown) {
            showLatest(shown, playedS);
        } else {
            finish();
        }
    }

    /** Shows the first picture, and has the clock run as soon as there is sound to begin with. */
    private void begin(Run.Due first) throws InterruptedException {
        if (run.moving() && feeder.isPresent() && !run.heard()) {
            Thread.sleep(1);
            return;
        }
        if (first instanceof Run.Shown shown) {
            run.take();
            show(shown);
        }
        if (run.moving()) {
            clock.start();
        }
        started = true;
    }

    /** Shows a picture that is due, or a later one that is due too. */
    private void showLatest(Run.Shown shown, double playedS) {
        run.take();
        Run.Shown latest = shown;
        while (run.nextNow().orElse(null) instanceof Run.Shown later && later.playedS() - AHEAD_S <= playedS) {
            run.take();
            drawer.back(latest.picture());
            droppedLate++;
            latest = later;
        }
        counts = new Counts(
                counts.shown() + 1,
                droppedLate + drawer.dropped(),
                Math.max(counts.worstOffsetMs(), Math.abs(playedS - latest.playedS()) * 1000));
        show(latest);
        if (playedS - latest.playedS() > LOST_S) {
            order(this::beginAnew);
        }
    }

    /** Has picture and sound begin together where the sound is, unless something else was ordered. */
    private void beginAnew() {
        if (!ordered) {
            wantedS = Optional.of(soundS());
            ordered = true;
        }
    }

    private void show(Run.Shown shown) {
        timeS = shown.timeS();
        synchronized (showing) {
            if (!closed) {
                sink.shown(shown.picture(), shown.timeS());
            }
        }
        seen.ifPresent(drawer::back);
        seen = Optional.of(shown.picture());
    }

    /** The clip has come to its end. */
    private void finish() {
        synchronized (orders) {
            if (ordered) {
                return;
            }
            playing = false;
            atEnd = true;
            moved = false;
            end(run);
            run = Run.still(timeS, 0);
        }
        stopped();
    }

    private void stopped() {
        synchronized (showing) {
            if (!closed) {
                sink.stopped();
            }
        }
    }

    /** Stops; the sink is told nothing more. What it holds is let go of as soon as its threads have looked up. */
    @Override
    public void close() {
        synchronized (showing) {
            closed = true;
        }
        order(() -> {});
    }

    /** Waits until everything is let go of after it was closed. */
    void awaitClosed() throws InterruptedException {
        left.await();
    }
}
