package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.score.Bar;
import tuttarco.score.Hints;
import tuttarco.score.Metre;
import tuttarco.score.Note;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;

/**
 * Where a recording begins before the players do, or while they play: what is heard is timed, and what is not heard is not
 * laid into silence nor squeezed in where the sound begins. Seeds not used for choosing.
 */
class LateStartTest {
    private static final int BARS = 6;

    /** Notes looked at from the first that is heard whole. */
    private static final int FIRST = 4;

    private static final long[] SEEDS = {2000, 2001, 2002, 2003, 2004, 2005};

    @TempDir
    Path folder;

    /** What became of the first notes of some recordings. */
    private static final class Count {
        private int looked;
        private int right;
        private int invented;
    }

    /**
     * Players begin with a pickup of the pitch that follows, so that the tempo and what rises out of the silence alone tell
     * the two notes apart; some seconds of a room's noise come before.
     */
    @ParameterizedTest
    @CsvSource({"1,0.3,-30", "2,0.3,-30", "1,2,-30", "2,2,-30", "1,2,-20", "1,6,-40"})
    void aPickupAfterSilenceIsTimed(int pickupNotes, double leadS, double noiseDb) throws Exception {
        Count count = new Count();
        for (long seed : SEEDS) {
            count(count, seed, pickupNotes, 0, 0, leadS, noiseDb, 0);
        }
        assertRight(count, 0, pickupNotes + " pickup notes after " + leadS + " s");
    }

    /**
     * The camera starts while they play: at a note, or half way through one. That it starts within the part's first two notes
     * is not tried: where these are alike, nothing but the tempo tells that from a recording cut at the first.
     */
    @ParameterizedTest
    @CsvSource({"3,0", "6,0", "3,0.5", "6,0.5"})
    void notesBeforeTheRecordingAreNotInvented(int missed, double share) throws Exception {
        Count count = new Count();
        for (long seed : SEEDS) {
            count(count, seed, 1, missed, share, 0, -30, 0);
        }
        assertRight(count, 1, missed + share + " notes missed");
    }

    /** Somebody turns the sound up over so many seconds. */
    @ParameterizedTest
    @CsvSource({"1", "3"})
    void softBeginningsAreStillHeard(double fadeS) throws Exception {
        Count count = new Count();
        for (long seed : SEEDS) {
            count(count, seed, 1, 0, 0, 1, -40, fadeS);
        }
        assertRight(count, 0, "faded in over " + fadeS + " s");
    }

    private static void assertRight(Count count, int mostInvented, String what) {
        String score = String.format(
                Locale.ROOT,
                "%s: %d of %d first notes within 250 ms, %d invented",
                what,
                count.right,
                count.looked,
                count.invented);
        System.out.println(score);
        assertEquals(FIRST * SEEDS.length, count.looked);
        assertTrue(count.right >= 0.9 * count.looked, score);
        assertTrue(count.invented <= mostInvented, score);
    }

    /**
     * Adds one recording to a count.
     *
     * @param missed notes over before the recording begins
     * @param share how much of the next is over, too, as a share of it
     * @param leadS seconds of noise before the first note, if none is missed
     */
    private void count(
            Count count,
            long seed,
            int pickupNotes,
            int missed,
            double share,
            double leadS,
            double noiseDb,
            double fadeS)
            throws Exception {
        Part part = withPickup(Section.tune(seed, BARS), pickupNotes);
        PartChords chords = PartChords.of(part);
        DoubleUnaryOperator playedS = Section.swaying(10, 0.5);
        float[] whole = new float[(int) ((playedS.applyAsDouble(chords.lengthQuarters()) + 2) * Section.RATE)];
        new Section(seed + 1, seed % 2 == 0 ? 1 : 12, 440).play(part, 0, BARS + 1, playedS, whole);
        List<Integer> notes = new ArrayList<>();
        for (int s = 0; s < chords.onsets().length; s++) {
            if (chords.onsets()[s]) {
                notes.add(s);
            }
        }
        double startS = playedS.applyAsDouble(chords.startQuarters()[notes.get(missed)]);
        double endS = playedS.applyAsDouble(chords.endQuarters(notes.get(missed)));
        double fromS = startS + share * (endS - startS) - leadS;
        float[] recording = Arrays.copyOfRange(whole, (int) (fromS * Section.RATE), whole.length);
        for (int i = 0; i < fadeS * Section.RATE; i++) {
            recording[(int) (leadS * Section.RATE) + i] *= (float) (i / (fadeS * Section.RATE));
        }
        new Section(seed + 2, 1, 440).noise(recording, noiseDb);
        Path wav = folder.resolve("late.wav");
        Section.write(recording, wav);
        SoundFeatures sound = SoundFeatures.of(wav);
        List<Onset> onsets = new ArrayList<>();
        for (Passage passage : new PassageFinder(chords).passages(sound)) {
            onsets.addAll(new OnsetTimer(chords, sound).onsets(new PassageTimer(chords, sound).timed(passage)));
        }
        int heard = missed + (share > 0 ? 1 : 0);
        for (int n = 0; n < heard + FIRST; n++) {
            double quarters = chords.startQuarters()[notes.get(n)];
            double truthS = playedS.applyAsDouble(quarters) - fromS;
            boolean found =
                    onsets.stream().anyMatch(o -> o.quarters() == quarters && Math.abs(o.timeS() - truthS) <= 0.25);
            boolean said = onsets.stream().anyMatch(o -> o.quarters() == quarters);
            count.looked += n >= heard ? 1 : 0;
            count.right += n >= heard && found ? 1 : 0;
            count.invented += n < heard && said && !found ? 1 : 0;
        }
    }

    /** The tune after so many half beats of its first pitch. */
    private static Part withPickup(Part tune, int notes) {
        double firstBeat = 5 - 0.5 * notes;
        List<Bar> bars = new ArrayList<>(List.of(new Bar("0", new Metre(4, 4), firstBeat, 0.5 * notes)));
        bars.addAll(tune.bars());
        List<Note> played = new ArrayList<>();
        for (int i = 0; i < notes; i++) {
            Position end = i + 1 < notes ? new Position(0, firstBeat + 0.5 * (i + 1)) : new Position(1, 1);
            played.add(note(
                    new Position(0, firstBeat + 0.5 * i),
                    end,
                    tune.notes().get(0).pitches()));
        }
        for (Note note : tune.notes()) {
            played.add(note(later(note.start()), later(note.end()), note.pitches()));
        }
        return new Part("tune", bars, List.of(), played, Hints.NONE, List.of());
    }

    private static Position later(Position place) {
        return new Position(place.barIndex() + 1, place.beat());
    }

    private static Note note(Position start, Position end, List<Integer> pitches) {
        return new Note(start, end, pitches, false, new Note.Written(start.barIndex(), 0));
    }
}
