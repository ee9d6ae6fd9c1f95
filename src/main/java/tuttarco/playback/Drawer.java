package tuttarco.playback;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import tuttarco.video.ClipFacts;
import tuttarco.video.ClipPictures;

/** Decodes and draws pictures ahead of their time, for one run after the other, on a thread of its own. */
final class Drawer {
    /** Java pictures in use: one is seen, one is drawn, the others wait for their time (chosen: an eighth of a second at 30 a second). */
    private static final int PICTURES = 6;

    /** A picture this much behind its time is not drawn, so that those after it come in time; seconds: the figure. */
    private static final double LATE_S = 0.04;

    /** Of pictures that are late one is drawn after so many, so that something is seen (chosen). */
    private static final int PASSED_OVER = 4;

    private ClipPictures pictures;
    /** The last picture is seen as long as one is on average, and no longer than this, seconds (chosen). */
    private static final double LONGEST_PICTURE_S = 1;

    private final NextLap nextLap;
    private final ClipFacts facts;
    private final Clock clock;
    private final Handing runs;
    private final BlockingQueue<BufferedImage> free = new LinkedBlockingQueue<>();
    private volatile Dimension size;
    private volatile Optional<String> trouble = Optional.empty();
    private final AtomicLong dropped = new AtomicLong();
    private int droppedInARow;

    Drawer(ClipPictures pictures, Clock clock, Handing runs) {
        this.pictures = pictures;
        this.nextLap = new NextLap(pictures.facts().file());
        this.clock = clock;
        this.runs = runs;
        facts = pictures.facts();
        size = new Dimension(facts.widthPx(), facts.heightPx());
        for (int i = 0; i < PICTURES; i++) {
            free.add(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
        }
    }

    /** Pictures are as large as fits from now on. */
    void fit(int widthPx, int heightPx) {
        double scale = Math.min((double) widthPx / facts.widthPx(), (double) heightPx / facts.heightPx());
        size = new Dimension((int) Math.max(1, Math.round(facts.widthPx() * scale)), (int)
                Math.max(1, Math.round(facts.heightPx() * scale)));
    }

    /** Takes a picture back, to draw another one into it. */
    void back(BufferedImage picture) {
        free.add(picture);
    }

    long dropped() {
        return dropped.get();
    }

    Optional<String> trouble() {
        return trouble;
    }

    /** Works until no run will come any more. */
    void work() throws InterruptedException {
        try {
            for (Optional<Run> run = runs.next(); run.isPresent(); run = runs.next()) {
                try {
                    draw(run.get());
                } catch (IllegalStateException e) {
                    trouble = Optional.of("The picture can't be shown on from here; the video may be damaged.");
                    run.get().add(new Run.End(0));
                }
            }
        } finally {
            pictures.close();
            nextLap.close();
        }
    }

    private void draw(Run run) throws InterruptedException {
        if (run.course().endless()) {
            nextLap.prepare(run.course().clipBeginS(1));
        }
        pictures.seek(run.course().clipBeginS(0));
        boolean there = true;
        for (int i = 0; i < Math.abs(run.steps()) && there; i++) {
            there = run.steps() > 0 ? pictures.next() : pictures.previous();
        }
        draw(run, 0);
        int lap = 0;
        while (run.moving() && !run.over()) {
            double lastS = pictures.timeS();
            boolean more = pictures.next();
            if (run.course().endless() && (!more || run.course().behind(pictures.timeS()))) {
                lap++;
                pictures = nextLap.swap(pictures);
            } else if (!more) {
                trouble = pictures.trouble();
                run.add(new Run.End(run.playedS(lastS + Math.min(LONGEST_PICTURE_S, 1 / facts.framesPerS()), lap)));
                return;
            }
            double playedS = run.playedS(pictures.timeS(), lap);
            if (clock.playedS() - playedS > LATE_S && droppedInARow < PASSED_OVER) {
                dropped.incrementAndGet();
                droppedInARow++;
            } else {
                droppedInARow = 0;
                draw(run, playedS);
            }
        }
    }

    private void draw(Run run, double playedS) throws InterruptedException {
        BufferedImage picture = null;
        while (picture == null) {
            if (run.over()) {
                return;
            }
            picture = free.poll((long) (Clock.MOMENT_S * 1000), TimeUnit.MILLISECONDS);
        }
        Dimension wanted = size;
        if (picture.getWidth() != wanted.width || picture.getHeight() != wanted.height) {
            picture = new BufferedImage(wanted.width, wanted.height, BufferedImage.TYPE_INT_RGB);
        }
        pictures.draw(picture);
        if (!run.add(new Run.Shown(picture, pictures.timeS(), playedS))) {
            free.add(picture);
        }
    }
}
