package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tuttarco.analysis.SectionReader;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.review.TakeReading.State;
import tuttarco.score.PartChoice;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.take.BeatsGiven;

/** The reading as the window shows it; this thread plays the window's. */
class TakeReadingTest {
    private static final Player PLAYER = new Player(
            "Oriel", 1, Place.OUTSIDE, Instrument.VIOLIN, new SeatBox(0, 0, 100, 100), Optional.empty(), true);

    private final LinkedBlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final Background background = new Background(window::add);
    private final Session session = new Session(background, new Keeping() {
        @Override
        public void opened(Draft draft) {}

        @Override
        public String keep(Draft draft) {
            return "Saved.";
        }
    });
    private final AtomicLong clockNs = new AtomicLong();
    private final Draft seated = Draft.ofVideo(Path.of("take.mp4")).withPlayers(List.of(PLAYER));

    @AfterEach
    void end() {
        background.close();
    }

    /** Reads as a test tells it: a queue of what it reports, and a gate at the end. */
    private final class Scripted implements TakeReading.Reader {
        final Queue<double[]> steps = new ArrayDeque<>();
        final CountDownLatch gate = new CountDownLatch(1);
        Optional<Exception> fails = Optional.empty();

        @Override
        public TakeReading.Read read(Draft draft, SectionReader.Progress progress) throws Exception {
            for (double[] step : steps) {
                background.tell(() -> clockNs.set((long) (step[0] * 1e9)));
                progress.reached(step[1], step[2]);
            }
            if (fails.isPresent()) {
                throw fails.get();
            }
            gate.await();
            return null;
        }
    }

    private void windowRunsNext() throws InterruptedException {
        Runnable next = window.poll(10, TimeUnit.SECONDS);
        assertTrue(next != null, "nothing was told to the window");
        next.run();
    }

    private void windowRuns(int count) throws InterruptedException {
        for (int i = 0; i < count; i++) {
            windowRunsNext();
        }
    }

    @Test
    void whatComesFirstIsSaid() {
        TakeReading reading = new TakeReading(session, new Scripted(), clockNs::get);
        assertEquals(
                "open", assertInstanceOf(State.NotYet.class, reading.state()).step());
        session.open(Draft.ofVideo(Path.of("take.mp4")));
        assertEquals(
                "seats", assertInstanceOf(State.NotYet.class, reading.state()).step());
        session.open(seated);
        assertInstanceOf(State.Ready.class, reading.state());
    }

    @Test
    void aTakeWithNothingToCompareWithIsNotReadForNothing() {
        TakeReading reading = new TakeReading(session, new Scripted(), clockNs::get);
        Player follows = new Player(
                "Oriel", 1, Place.OUTSIDE, Instrument.VIOLIN, new SeatBox(0, 0, 100, 100), Optional.empty(), false);
        Draft alone = Draft.ofVideo(Path.of("take.mp4")).withPlayers(List.of(follows));
        session.open(alone);
        assertEquals(
                "music", assertInstanceOf(State.NotYet.class, reading.state()).step());
        session.open(alone.withBeats(new BeatsGiven.Listed(Path.of("take.beats.csv"))));
        assertInstanceOf(State.Ready.class, reading.state());
    }

    @Test
    void beforeItBeginsItIsSaidWhoIsReadAndWhatThatIsComparedWith() {
        Optional<Draft> led = Optional.of(seated);
        assertTrue(
                ReadingWords.of(new State.Ready(), led)
                        .startsWith(
                                "1 player is read and compared with the leader's strokes, as there is neither part nor beats. "));
        Optional<Draft> listed =
                Optional.of(seated.withPart(Optional.of(Path.of("part.musicxml")), PartChoice.DEFAULT, Optional.empty())
                        .withBeats(new BeatsGiven.Listed(Path.of("take.beats.csv"))));
        assertTrue(ReadingWords.of(new State.Ready(), listed)
                .startsWith("1 player is read and compared with the bowing of part.musicxml; the beats are those of"
                        + " take.beats.csv. "));
    }

    @Test
    void whatWasSaidOfOneStepIsNotSaidOfTheNextButTroubleStays() {
        session.say("Looking.");
        session.wentOn();
        assertEquals("", session.message().sentence());
        session.trouble("It is dark.");
        session.wentOn();
        assertEquals("It is dark.", session.message().sentence());
    }

    @Test
    void whatRemainsIsToldAtThePaceOfThisRun() throws InterruptedException {
        Scripted reader = new Scripted();
        // goes on at 20 s of 60; reads 10 s of the clip in 5 s, so the last 30 take 15
        reader.steps.add(new double[] {0, 0, 60});
        reader.steps.add(new double[] {1, 20, 60});
        reader.steps.add(new double[] {2, 22, 60});
        reader.steps.add(new double[] {6, 30, 60});
        TakeReading reading = new TakeReading(session, reader, clockNs::get);
        session.open(seated);
        reading.begin();
        windowRuns(7);
        assertEquals(Optional.empty(), ((State.Going) reading.state()).remainingS());
        windowRuns(2);
        State.Going going = assertInstanceOf(State.Going.class, reading.state());
        assertEquals(30, going.readS());
        assertEquals(15, going.remainingS().orElseThrow(), 1e-9);
        assertEquals("Read 0:30 of 1:00; about 20 seconds to go.", ReadingWords.of(going));
        assertEquals(0.5, ReadingWords.share(going));
    }

    @Test
    void whatIsStoppedGoesOn() throws InterruptedException {
        Scripted reader = new Scripted();
        reader.steps.add(new double[] {1, 12, 60});
        TakeReading reading = new TakeReading(session, reader, clockNs::get);
        session.open(seated);
        reading.begin();
        windowRuns(3);
        reading.stop();
        assertInstanceOf(State.Stopping.class, reading.state());
        reading.begin();
        assertInstanceOf(State.Stopping.class, reading.state(), "one reading at a time");
        windowRunsNext();
        State.Stopped stopped = assertInstanceOf(State.Stopped.class, reading.state());
        assertEquals(12, stopped.readS());
        assertEquals("Go on reading", ReadingWords.next(stopped));
        reading.begin();
        assertInstanceOf(State.Going.class, reading.state());
    }

    @Test
    void whatWentWrongIsOneSentence() throws InterruptedException {
        Scripted reader = new Scripted();
        reader.fails = Optional.of(new InputException("take.mp4 holds no picture; give a video file."));
        TakeReading reading = new TakeReading(session, reader, clockNs::get);
        session.open(seated);
        reading.begin();
        windowRuns(2);
        assertEquals("take.mp4 holds no picture; give a video file.", ReadingWords.of(reading.state()));
        assertEquals("Try again", ReadingWords.next(reading.state()));
    }

    @Test
    void aTakeThatIsChangedMeanwhileIsReadAnew() throws InterruptedException {
        Scripted reader = new Scripted();
        TakeReading reading = new TakeReading(session, reader, clockNs::get);
        session.open(seated);
        reading.begin();
        session.open(Draft.ofVideo(Path.of("other.mp4")).withPlayers(List.of(PLAYER)));
        assertInstanceOf(State.Stopping.class, reading.state());
        windowRunsNext();
        assertInstanceOf(State.Ready.class, reading.state());
        assertEquals(Optional.empty(), session.analysed());
    }
}
