package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.cli.TinyTake;
import tuttarco.files.Cache;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.HiddenMarkovReader;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.ArmTracker;
import tuttarco.tracks.ArmTrackers;
import tuttarco.tracks.FlowArmTracker;
import tuttarco.tracks.Memo;
import tuttarco.video.Frame;

/** A run that finds tracks kept says the same as one that does not, and follows no arm twice. */
class KeptTracksTest {
    private static final int FRAMES = 90;
    private static final List<Player> PLAYERS = List.of(player("Ida", 0), player("Jon", 160));

    @TempDir
    static Path given;

    @TempDir
    Path folder;

    private static Path clip;
    private static SectionReading undisturbed;

    /** Frames followed, over all arms, in the run so far. */
    private final AtomicInteger followed = new AtomicInteger();

    private final List<String> said = new ArrayList<>();
    private Path kept;

    @BeforeAll
    static void readUndisturbed() throws Exception {
        clip = given.resolve("clip.mkv");
        TinyTake.writeClip(clip, FRAMES, 30);
        undisturbed = reader(Optional.empty(), frame -> {}).read(clip, PLAYERS, (t, l) -> {});
        assertTrue(undisturbed.readings().get(0).strokes().size() > 4, "strokes to compare");
    }

    @BeforeEach
    void nameTheCache() {
        kept = folder.resolve("kept");
    }

    private static Player player(String label, int xPx) {
        SeatBox seat = new SeatBox(xPx, 0, 160, 160);
        return new Player(label, 1, Place.OUTSIDE, Instrument.VIOLIN, seat, Optional.of(Facing.CAMERA), false);
    }

    private static SectionReader reader(Optional<Cache> cache, Consumer<Frame> watcher) {
        return new SectionReader(
                () -> new Watched(watcher), new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT), 2, "", cache);
    }

    private SectionReading read(Path video, List<Player> players) throws Exception {
        return read(video, players, frame -> {});
    }

    private SectionReading read(Path video, List<Player> players, Consumer<Frame> watcher) throws Exception {
        followed.set(0);
        said.clear();
        Consumer<Frame> counting = frame -> {
            followed.incrementAndGet();
            watcher.accept(frame);
        };
        return reader(Optional.of(new Cache(kept)), counting).read(video, players, new SectionReader.Progress() {
            @Override
            public void reached(double clipTimeS, double lengthS) {}

            @Override
            public void said(String sentence) {
                said.add(sentence);
            }
        });
    }

    private Path entry() throws IOException {
        try (Stream<Path> files = Files.list(kept)) {
            List<Path> entries = files.toList();
            assertEquals(1, entries.size(), entries.toString());
            return entries.get(0);
        }
    }

    @Test
    void aSecondRunFollowsNoArmAndSaysSo() throws Exception {
        assertEquals(undisturbed, read(clip, PLAYERS));
        assertEquals(2 * FRAMES, followed.get());
        assertEquals(List.of(), said);

        assertEquals(undisturbed, read(clip, PLAYERS));
        assertEquals(0, followed.get());
        assertEquals(List.of("The arms were followed in an earlier run."), said);
    }

    @Test
    void otherNamesForTheSameSeatsAreNewOnTheTracksKept() throws Exception {
        read(clip, PLAYERS);
        SectionReading renamed = read(clip, List.of(player("Lea", 0), player("Max", 160)));
        assertEquals(0, followed.get());
        assertEquals("Lea", renamed.tracks().get(0).player().label());
        assertEquals("Max", renamed.readings().get(1).player().label());
        assertEquals(
                undisturbed.tracks().get(1).samples(), renamed.tracks().get(1).samples());
        assertFalse(Files.readString(entry(), StandardCharsets.ISO_8859_1).contains("Ida"));
    }

    @Test
    void aCopyOfTheClipIsTheSameClipAndAnotherIsNot() throws Exception {
        read(clip, PLAYERS);
        read(Files.copy(clip, folder.resolve("copy.mkv")), PLAYERS);
        assertEquals(0, followed.get());

        Path other = folder.resolve("other.mkv");
        TinyTake.writeClip(other, FRAMES / 2, 30);
        SectionReading shorter = read(other, PLAYERS);
        assertEquals(FRAMES, followed.get());
        assertNotEquals(undisturbed.tracks(), shorter.tracks());
    }

    /** Stopped early, in the middle, and at the last frame. */
    @ParameterizedTest
    @ValueSource(ints = {0, 40, FRAMES - 1})
    void aRunThatWasStoppedGoesOnAndShowsNoFrameToAnArmTwice(int stopAt) throws Exception {
        Thread reading = Thread.currentThread();
        Consumer<Frame> stopping = frame -> {
            if (frame.index() == stopAt) {
                reading.interrupt();
            }
        };
        assertThrows(InterruptedException.class, () -> read(clip, PLAYERS, stopping));
        // both arms stopped it, the second one perhaps after it had stopped
        Thread.interrupted();
        int before = followed.get();
        assertTrue(before >= stopAt, before + " frames followed");

        assertEquals(undisturbed, read(clip, PLAYERS));
        assertEquals(2 * FRAMES, before + followed.get());
        assertEquals(1, said.size(), said.toString());
        assertTrue(said.get(0).startsWith("An earlier run was stopped; reading goes on at "), said.get(0));
        assertTrue(said.get(0).endsWith(" of 3.0."), said.get(0));
    }

    @Test
    void anEntryThatWasDamagedIsNotUsedAndWrittenAnew() throws Exception {
        read(clip, PLAYERS);
        byte[] whole = Files.readAllBytes(entry());
        Files.write(entry(), Arrays.copyOf(whole, whole.length / 2));

        assertEquals(undisturbed, read(clip, PLAYERS));
        assertEquals(2 * FRAMES, followed.get());
        assertEquals(List.of(), said);
        read(clip, PLAYERS);
        assertEquals(0, followed.get());
    }

    /** Its checksum is right, but nobody of this program wrote it. */
    @Test
    void anEntryThatIsNoMemoIsNotUsed() throws Exception {
        read(clip, PLAYERS);
        String key = entry().getFileName().toString().replace(".entry", "");
        new Cache(kept).entry(key).write(out -> out.write(new byte[] {0, -1, -1, -1, -1}));

        assertEquals(undisturbed, read(clip, PLAYERS));
        assertEquals(2 * FRAMES, followed.get());
        read(clip, PLAYERS);
        read(clip, PLAYERS);
        assertEquals(0, followed.get());
    }

    @Test
    void whereNothingCanBeKeptTheWorkIsDoneAllTheSame() throws Exception {
        Files.writeString(kept, "a file");
        assertEquals(undisturbed, read(clip, PLAYERS));
        assertEquals(1, said.size(), said.toString());
        assertTrue(said.get(0).startsWith("What is seen can't be kept for another run. Can't write "), said.get(0));
        assertEquals("a file", Files.readString(kept));
    }

    @Test
    void whatIsMissingOfAClipIsToldInEachRun() throws Exception {
        Path cut = folder.resolve("cut.mkv");
        byte[] whole = Files.readAllBytes(clip);
        Files.write(cut, Arrays.copyOf(whole, whole.length / 2));
        SectionReading first = read(cut, PLAYERS);
        assertTrue(
                first.notes().get(0).startsWith("cut.mkv could be read up to"),
                first.notes().toString());
        assertEquals(first, read(cut, PLAYERS));
        assertEquals(0, followed.get());
    }

    /** Flow alone, with somebody who is told of each frame that is followed. */
    private record Watched(Consumer<Frame> watcher) implements ArmTrackers {
        @Override
        public ArmTracker of(Player player) {
            return new WatchedArm(new FlowArmTracker(player), watcher);
        }

        @Override
        public String kind() {
            return "watched";
        }

        @Override
        public void close() {}
    }

    private record WatchedArm(ArmTracker arm, Consumer<Frame> watcher) implements ArmTracker {
        @Override
        public void accept(Frame frame) {
            arm.accept(frame);
            watcher.accept(frame);
        }

        @Override
        public void recall(Frame frame) {
            arm.recall(frame);
        }

        @Override
        public void note(Memo memo) throws IOException {
            arm.note(memo);
        }

        @Override
        public void settle() {
            arm.settle();
        }

        @Override
        public ArmTrack finish(double endS) {
            return arm.finish(endS);
        }

        @Override
        public void close() {
            arm.close();
        }
    }
}
