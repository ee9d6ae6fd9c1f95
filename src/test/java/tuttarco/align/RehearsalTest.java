package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.align.Rehearsal.Playing;
import tuttarco.beats.Beat;
import tuttarco.score.Bar;
import tuttarco.score.Note;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;

/** Which bars were played when, in synthesised rehearsals whose every note's time is known. */
class RehearsalTest {
    private static final double NEAR_S = 1.5;

    @TempDir
    Path folder;

    private Listening.Heard heard(Rehearsal rehearsal, int players) throws Exception {
        Path wav = folder.resolve("rehearsal.wav");
        rehearsal.write(new Section(31, players, 441), wav);
        return new HeardBeats(rehearsal.part(), wav).heard();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 8})
    void theBarsPlayedAreToldWithTheirTimes(int players) throws Exception {
        // bars 1 to 10; from bar 6 again, to 18; a skip to bar 25, to 32; talking between them
        List<Playing> playings =
                List.of(new Playing(0, 10, 4, 0.6), new Playing(5, 18, 35, 0.55), new Playing(24, 32, 70, 0.65));
        Rehearsal rehearsal = new Rehearsal(Section.tune(30, 32), playings, 95);

        Listening.Heard heard = heard(rehearsal, players);

        assertEquals(playings.size(), heard.passages().size(), heard.passages().toString());
        for (int i = 0; i < playings.size(); i++) {
            Playing played = playings.get(i);
            HeardPassage found = heard.passages().get(i);
            assertEquals(played.fromBar() + 1, Integer.parseInt(found.fromBar()), 1, found.toString());
            assertEquals(played.toBar(), Integer.parseInt(found.toBar()), 1, found.toString());
            assertEquals(played.startS(), found.fromS(), NEAR_S, found.toString());
            assertEquals(played.endS(), found.toS(), NEAR_S, found.toString());
            assertTrue(found.doubt() > 0 && found.doubt() < 1, found.toString());
        }
        assertRight(rehearsal, heard.beats().beats());
    }

    @Test
    void otherMusicIsLeftOutAndToldAndTheRestIsUsed() throws Exception {
        Rehearsal rehearsal = new Rehearsal(
                Section.tune(32, 24), List.of(new Playing(0, 12, 3, 0.6), new Playing(12, 24, 75, 0.6)), 110);
        int[] farKey = {63, 65, 66, 68, 70, 71, 73, 75, 77, 78, 80, 82, 83, 85, 87};
        float[] recording = new float[(int) (110 * Section.RATE)];
        Section section = new Section(33, 4, 440);
        for (Playing playing : rehearsal.playings()) {
            section.play(rehearsal.part(), playing.fromBar(), playing.toBar(), playing::timeS, recording);
        }
        section.play(Section.tune(34, 12, farKey), 0, 12, q -> 35 + 0.58 * q, recording);
        section.noise(recording, -30);
        Path wav = folder.resolve("other.wav");
        Section.write(recording, wav);

        Listening.Heard heard = new HeardBeats(rehearsal.part(), wav).heard();

        assertRight(rehearsal, heard.beats().beats());
        assertTrue(heard.beats().beats().stream().noneMatch(b -> b.timeS() > 36 && b.timeS() < 62));
        assertTrue(
                heard.leftOut().orElseThrow().startsWith("Left out because it resembles the part no more than other"),
                heard.leftOut().toString());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whetherARepeatWasTakenIsHeard(boolean taken) throws Exception {
        // bars 1 to 8 stand twice in the part, as played with the repeat
        Part part = firstBarsTwice(Section.tune(35, 16), 8);
        Rehearsal rehearsal = new Rehearsal(part, List.of(new Playing(taken ? 0 : 8, 24, 3, 0.6)), 66);

        Listening.Heard heard = heard(rehearsal, 4);

        assertEquals(1, heard.passages().size(), heard.passages().toString());
        long fifth = heard.beats().beats().stream()
                .filter(b -> b.bar().equals("5") && b.beat() == 1)
                .count();
        assertEquals(taken ? 2 : 1, fifth, "bar 5 was played so many times");
    }

    /** Most beats played are found, and most of those found are where they were played. */
    private static void assertRight(Rehearsal rehearsal, List<Beat> beats) {
        String found = rehearsal.right(beats) + " of " + beats.size() + " beats right, " + rehearsal.beatsPlayed()
                + " were played";
        assertTrue(rehearsal.right(beats) >= 0.85 * rehearsal.beatsPlayed(), found);
        assertTrue(rehearsal.right(beats) >= 0.85 * beats.size(), found);
    }

    private static Part firstBarsTwice(Part once, int count) {
        List<Bar> bars = new ArrayList<>(once.bars().subList(0, count));
        bars.addAll(once.bars());
        List<Note> notes = new ArrayList<>();
        for (Note note : once.notes()) {
            if (note.start().barIndex() < count) {
                notes.add(note);
            }
        }
        for (Note note : once.notes()) {
            notes.add(new Note(
                    later(note.start(), count),
                    later(note.end(), count),
                    note.pitches(),
                    note.plucked(),
                    note.written()));
        }
        return new Part(once.name(), bars, once.spans(), notes, once.hints(), List.of());
    }

    private static Position later(Position position, int bars) {
        return new Position(position.barIndex() + bars, position.beat());
    }
}
