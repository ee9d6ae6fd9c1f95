package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.ReadByHand;
import tuttarco.analysis.Uncorrected;
import tuttarco.beats.Beat;
import tuttarco.beats.TappedBeats.Every;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.review.PartModel.Use;
import tuttarco.score.PartChoice;
import tuttarco.score.Typed;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;

/** Part and beats as the window shows them; this thread plays the window's. */
class MusicModelTest {
    private static final String TWO_BARS = "metre 4/4\n1: d u d u\n2: d u d u\n";

    private static final String TWO_PARTS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <score-partwise version="4.0">
              <part-list>
                <score-part id="P1"><part-name>First</part-name></score-part>
                <score-part id="P2"><part-name>Second</part-name></score-part>
              </part-list>
              <part id="P1"><measure number="1">
                <attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>
                <note><pitch><step>D</step><octave>4</octave></pitch><duration>4</duration></note>
              </measure></part>
              <part id="P2"><measure number="1">
                <attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>
                <note><pitch><step>B</step><octave>3</octave></pitch><duration>4</duration></note>
              </measure></part>
            </score-partwise>
            """;

    @TempDir
    private Path folder;

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
    private final MusicModel model = new MusicModel(session);
    private final PartModel part = model.part();
    private final BeatsModel beats = model.beats();
    private final Tapping tapping = model.tapping();

    @BeforeEach
    void open() {
        session.open(Draft.ofVideo(folder.resolve("take.mp4")));
    }

    @AfterEach
    void end() {
        background.close();
    }

    private void until(BooleanSupplier so) throws InterruptedException {
        while (!so.getAsBoolean()) {
            Runnable next = window.poll(30, TimeUnit.SECONDS);
            assertTrue(next != null, "nothing more was told to the window");
            next.run();
        }
    }

    private Path file(String name, String content) throws Exception {
        return Files.writeString(folder.resolve(name), content);
    }

    private Draft draft() {
        return session.draft().orElseThrow();
    }

    private void choosePart(String text) throws Exception {
        part.choose(Use.PART, file("a.bowing.txt", text));
        until(() -> part.part().isPresent());
    }

    /** Eight beats, half a second each from 1 s, listed as sure as taps. */
    private void listBeats() throws Exception {
        StringBuilder csv = new StringBuilder("bar,beat,time_s\n");
        for (int i = 0; i < 8; i++) {
            csv.append(1 + i / 4)
                    .append(',')
                    .append(1 + i % 4)
                    .append(',')
                    .append(1 + i / 2.0)
                    .append('\n');
        }
        beats.give(new BeatsGiven.Listed(file("b.csv", csv.toString())));
        until(() -> beats.beats().isPresent());
    }

    private double timeS(int index) {
        return beats.beats().orElseThrow().beats().get(index).timeS();
    }

    @Test
    void aPartBesideTheTakeIsReadAndNamed() throws Exception {
        choosePart(TWO_BARS);
        assertEquals(Optional.of(folder.resolve("a.bowing.txt")), draft().part());
        assertEquals(2, part.part().orElseThrow().bars().size());
        part.bowing(Bowing.FREE);
        assertEquals(Bowing.FREE, draft().bowing());
    }

    @Test
    void aPartElsewhereIsOfferedToBeCopiedAndNothingIsWrittenOver(@TempDir Path elsewhere) throws Exception {
        Path other = Files.writeString(elsewhere.resolve("a.bowing.txt"), TWO_BARS);
        file("a.bowing.txt", "something else");
        part.choose(Use.PART, other);
        assertTrue(draft().part().isEmpty());
        assertTrue(part.offer().orElseThrow().sentence().contains("copy it beside the take?"));
        part.copyOffered();
        until(() -> part.part().isPresent());
        Path copy = folder.resolve("a-2.bowing.txt");
        assertEquals(Optional.of(copy), draft().part());
        assertEquals(TWO_BARS, Files.readString(copy));
        assertEquals("something else", Files.readString(folder.resolve("a.bowing.txt")));
        assertTrue(part.offer().isEmpty());
    }

    @Test
    void aPartThatIsNoneSaysSoAndTheChoiceIsKept() throws Exception {
        part.choose(Use.PART, file("a.bowing.txt", "1: d u\n"));
        until(() -> part.state() instanceof PartModel.State.Wrong);
        assertTrue(((PartModel.State.Wrong) part.state()).sentence().contains("line 1, column 1"));
        part.choice(new PartChoice(Optional.empty(), Optional.of("2"), Optional.empty(), true));
        assertEquals(Optional.of("2"), draft().partChoice().voice());
    }

    @Test
    void whereAFileHoldsSeveralPartsTheirNamesAreToldAndOneIsToBeChosen() throws Exception {
        part.choose(Use.PART, file("two.musicxml", TWO_PARTS));
        until(() -> part.trouble().isPresent() && part.names().size() == 2);
        assertEquals(List.of("First", "Second"), part.names());
        String trouble = part.trouble().orElseThrow();
        assertTrue(trouble.endsWith("; choose it in Part in the file."), trouble);
        part.choice(new PartChoice(Optional.of("Second"), Optional.empty(), Optional.empty(), true));
        until(() -> part.part().isPresent());
        assertEquals(Optional.empty(), part.trouble());
    }

    @Test
    void whatTheReadingOfTheBowsHeardIsNotHeardAgain() throws Exception {
        choosePart(TWO_BARS);
        assertInstanceOf(BeatsModel.State.Unheard.class, beats.state());
        Uncorrected read = ReadByHand.take(folder);
        session.read(read, Analysis.standard("test").judged(read, CorrectionLog.EMPTY));
        assertEquals(read.told().orElseThrow().beats(), beats.beats().orElseThrow());
    }

    @Test
    void aBeatThatWasMovedInReviewIsShownThereAndStaysUntilThatIsUndone() throws Exception {
        choosePart(TWO_BARS);
        Uncorrected read = ReadByHand.take(folder);
        CorrectionLog log = new CorrectionLog(
                List.of(new LogEntry.Done(
                        UUID.randomUUID(), Instant.EPOCH, new Correction.BeatMoved("1", 3, 2, 2.2), Map.of())),
                List.of(),
                Optional.empty());
        session.read(read, Analysis.standard("test").judged(read, log));
        assertEquals(2.2, timeS(2), 1e-12);
        assertTrue(BeatsModel.movedInReview(beats.beats().orElseThrow().beats().get(2)));
        beats.move(2, 2);
        assertEquals(
                "Somebody moved bar 1 beat 3 in Review; undo that there to move it here.",
                session.message().sentence());
        assertEquals(2.2, timeS(2), 1e-12);
    }

    @Test
    void withoutThePartBeatsThatNeedItAreGoneToo() throws Exception {
        choosePart(TWO_BARS);
        beats.give(new BeatsGiven.Steady(60, 0));
        part.takeAway(Use.PART);
        assertInstanceOf(BeatsGiven.Missing.class, draft().beats());
        assertTrue(part.part().isEmpty());
        assertInstanceOf(BeatsModel.State.None.class, beats.state());
    }

    @Test
    void bowTextIsSavedAsItIsTypedAndNamedOnceItCanBeRead() throws Exception {
        BowTyping typing = model.typing();
        typing.open(Use.PART);
        until(() -> typing.sheet().isPresent());
        Path file = folder.resolve("take.bowing.txt");
        typing.type("metre 4/4\n1: d u\n");
        until(() -> typing.wrong().isPresent());
        Typed.Wrong wrong = typing.wrong().orElseThrow();
        assertEquals(Optional.of(new Typed.Place(2, 1)), wrong.place());
        assertEquals("metre 4/4\n1: d u\n", Files.readString(file));
        assertTrue(draft().part().isEmpty());
        typing.type(TWO_BARS);
        until(() -> part.part().isPresent());
        assertTrue(typing.wrong().isEmpty());
        assertEquals(Optional.of(file), draft().part());
        assertEquals(2, part.part().orElseThrow().bars().size());
    }

    @Test
    void whatIsTypedBeforeClosingIsSavedAtOnce() throws Exception {
        BowTyping typing = model.typing();
        typing.open(Use.PART);
        until(() -> typing.sheet().isPresent());
        typing.type("metre 3/4\n1: d");
        model.hidden();
        assertEquals("metre 3/4\n1: d", Files.readString(folder.resolve("take.bowing.txt")));
    }

    @Test
    void whatWasSavedAtOnceIsReadButNotWrittenAgain() throws Exception {
        BowTyping typing = model.typing();
        typing.open(Use.PART);
        until(() -> typing.sheet().isPresent());
        typing.type(TWO_BARS);
        model.hidden();
        Files.delete(folder.resolve("take.bowing.txt"));
        until(() -> part.part().isPresent());
        assertFalse(Files.exists(folder.resolve("take.bowing.txt")));
    }

    @Test
    void barsAreWrittenOverThePart() throws Exception {
        choosePart(TWO_BARS);
        BowTyping typing = model.typing();
        typing.open(Use.OVER);
        until(() -> typing.sheet().isPresent());
        typing.type("2: u d u d\n");
        until(() -> draft().over().isPresent());
        assertEquals(Optional.of(folder.resolve("take.over.bowing.txt")), draft().over());
        assertEquals(1, part.part().orElseThrow().awkward().size());
        typing.type("3: u d u d\n");
        until(() -> typing.wrong().isPresent());
        assertEquals(1, typing.wrong().orElseThrow().place().orElseThrow().column());
    }

    @Test
    void steadyAndListedBeatsAreThereAtOnceButWhatIsHeardIsAskedFor() throws Exception {
        choosePart(TWO_BARS);
        assertInstanceOf(BeatsModel.State.Unheard.class, beats.state());
        beats.give(new BeatsGiven.Steady(120, 1));
        until(() -> beats.beats().isPresent());
        assertEquals(8, beats.beats().orElseThrow().beats().size());
        assertEquals(4.5, timeS(7), 1e-12);
    }

    @Test
    void aVideoThatCannotBeHeardSaysSo() throws Exception {
        choosePart(TWO_BARS);
        beats.hear();
        until(() -> beats.state() instanceof BeatsModel.State.Wrong);
        String sentence = ((BeatsModel.State.Wrong) beats.state()).sentence();
        // bow text has no notes to listen for
        assertTrue(sentence.contains("no notes to listen for"), sentence);
        model.shown();
        until(() -> model.sound().trouble().isPresent());
        assertTrue(model.sound().trouble().orElseThrow().contains("take.mp4"));
    }

    @Test
    void aNudgedBarLineBecomesAnAnchorAndIsUndoneAsOneChange() throws Exception {
        choosePart(TWO_BARS);
        listBeats();
        beats.chooseBar(1);
        beats.chooseBar(1);
        assertEquals(4, beats.chosen().orElseThrow());
        beats.nudge(0.01);
        beats.nudge(0.01);
        beats.nudge(-0.001);
        assertEquals(List.of(new Beat("2", 1, 3.019)), beats.anchors());
        assertEquals(3.019, timeS(4), 1e-12);
        // one anchor moves the whole run
        assertEquals(1.019, timeS(0), 1e-12);
        assertInstanceOf(BeatsGiven.Listed.class, ((BeatsGiven.Anchored) draft().beats()).source());
        beats.undo();
        assertTrue(beats.anchors().isEmpty());
        assertEquals(3, timeS(4), 1e-12);
        beats.redo();
        assertEquals(3.019, timeS(4), 1e-12);
        beats.choose(0);
        beats.move(0, 1);
        assertEquals(2, beats.anchors().size());
        assertEquals(3.019, timeS(4), 1e-12);
        beats.choose(4);
        beats.freeChosen();
        assertEquals(List.of(new Beat("1", 1, 1)), beats.anchors());
    }

    @Test
    void anAnchorThatDoesNotFitIsRefusedInASentence() throws Exception {
        choosePart(TWO_BARS);
        listBeats();
        beats.move(0, 1.2);
        beats.move(4, 0.9);
        assertEquals(1, beats.anchors().size());
        assertEquals(Message.Kind.TROUBLE, session.message().kind());
        assertTrue(session.message().sentence().contains("contradict each other"));
    }

    @Test
    void tapsCountFromTheirBarAndBecomeAListWithTheLatenessTakenOff() throws Exception {
        choosePart(TWO_BARS);
        tapping.from(1);
        assertEquals(Optional.of("bar 2 beat 1"), tapping.next());
        for (double s : new double[] {5, 5.5, 5.6, 6}) {
            tapping.tap(s);
        }
        tapping.takeBack();
        tapping.takeBack();
        tapping.tap(6);
        assertEquals(Optional.of("bar 2 beat 4"), tapping.next());
        tapping.lateS(0.05);
        tapping.keepAsList();
        until(() -> beats.beats().isPresent());
        List<Beat> listed = beats.beats().orElseThrow().beats();
        assertEquals(List.of(4.95, 5.45, 5.95), listed.stream().map(Beat::timeS).toList());
        assertEquals("2", listed.get(0).bar());
        assertEquals(Beat.TAPPED, listed.get(0).source());
        assertEquals(new BeatsGiven.Listed(folder.resolve("take.tapped.csv")), draft().beats());
        // a second list does not take the place of the first, which undoing goes back to
        tapping.tap(7);
        tapping.tap(8);
        tapping.keepAsList();
        until(() -> draft().beats().equals(new BeatsGiven.Listed(folder.resolve("take.tapped-2.csv"))));
        assertTrue(Files.exists(folder.resolve("take.tapped.csv")));
    }

    @Test
    void tapsGoOnFromWhereTheSoundWasTakenBackTo() throws Exception {
        choosePart(TWO_BARS);
        IntStream.range(0, 6).forEach(i -> tapping.tap(10 + i));
        tapping.tap(12.9);
        assertEquals(List.of(10.0, 11.0, 12.0, 12.9), tapping.tapsS());
        assertEquals(Optional.of("bar 2 beat 1"), tapping.next());
    }

    @Test
    void lateTapsAreMeasuredAgainstTheBeatsThatAreKnown() throws Exception {
        choosePart(TWO_BARS);
        listBeats();
        double[] late = {0.02, 0.03, 0.04, 0.06, 0.05, 0.04, 0.2, 0.04};
        for (int i = 0; i < late.length; i++) {
            tapping.tap(1 + i / 2.0 + late[i]);
        }
        assertEquals(0.04, tapping.measuredLateS().orElseThrow(), 1e-9);
        tapping.clear();
        tapping.tap(1.03);
        tapping.tap(1.53);
        assertTrue(tapping.measuredLateS().isEmpty());
    }

    @Test
    void tapsForBarsBecomeAnchorsOfTheBeatsThatAreThere() throws Exception {
        choosePart(TWO_BARS);
        listBeats();
        tapping.every(Every.BAR);
        tapping.tap(1.1);
        tapping.tap(3.3);
        tapping.keepAsAnchors();
        assertEquals(List.of(new Beat("1", 1, 1.1), new Beat("2", 1, 3.3)), beats.anchors());
        assertEquals(1.1, timeS(0), 1e-12);
        // half way between the anchors the shift is half way, too
        assertEquals(2.2, timeS(2), 1e-12);
    }

    @Test
    void aStretchOfTheSoundIsMovedAndGrownWithinIt() {
        SoundStretch all = SoundStretch.of(0, 100);
        assertEquals(new SoundStretch(0, 20, 0, 100), all);
        SoundStretch closer = all.zoomed(0.5, 5);
        assertEquals(10, closer.lengthS(), 1e-12);
        assertEquals(all.xPx(5, 400), closer.xPx(5, 400), 1e-9);
        assertEquals(5, closer.timeS(closer.xPx(5, 400), 400), 1e-12);
        assertEquals(0, closer.scrolled(-9).fromS());
        assertEquals(100, all.scrolled(9).toS());
        assertEquals(new SoundStretch(0, 100, 0, 100), all.zoomed(99, 3));
        assertEquals(SoundStretch.SHORTEST_S, all.zoomed(1e-9, 3).lengthS(), 1e-12);
        assertEquals(35, all.showing(40).fromS(), 1e-12);
        assertEquals(all, all.showing(7));
    }
}
