package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextReader;
import tuttarco.files.InputException;
import tuttarco.parts.Parts;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;

class BowingStripTest extends ChartContract {
    private static final String TEXT = """
            part Violin I
            metre 4/4
            pickup: .1/2x2
            1: d . . .
            2: . d3
            3: -2 . .
            4: .3/2 =1/2 d d
            5: .4~
            6: ~ . -2
            """;

    private static Part part() {
        try {
            return new BowTextReader()
                    .read(TEXT.getBytes(java.nio.charset.StandardCharsets.UTF_8), "a.bowing.txt", Instrument.VIOLIN);
        } catch (InputException e) {
            throw new AssertionError(e);
        }
    }

    @Override
    Chart chart() {
        return new BowingStrip(part());
    }

    @Override
    Chart chartNaming(String label) {
        List<Bar> bars = part().bars().stream()
                .map(bar -> Bar.full(label, new Metre(4, 4)))
                .toList();
        return new BowingStrip(new Part(label, bars, part().spans(), List.of(), part().hints(), part().awkward()));
    }

    @Test
    void titleCountsMarksAndAwkwardPlaces() {
        assertEquals("The part's bowing: 4 of 16 strokes marked, 3 awkward places", chart().title());
    }

    @Test
    void tableSaysWhyOfEveryStroke() {
        List<List<String>> rows = chart().table().rows();
        assertEquals(16, rows.size());
        assertEquals(List.of("0", "4", "down", "upbeat to bar 1 beat 1", ""), rows.get(0));
        assertEquals(List.of("0", "4 1/2", "up", "carried on from bar 0", ""), rows.get(1));
        assertEquals(List.of("1", "1", "down", "marked", ""), rows.get(2));
        assertEquals("marked, a retake", rows.get(7).get(3));
        assertTrue(rows.get(7).get(4).startsWith("a down-bow is marked, but counted on from bar 1 beat 1"));
        assertEquals(List.of("4", "2 1/2", "down", "hooked", ""), rows.get(11));
    }

    @Test
    void notesUnderASlurAreToldAsOneStroke() throws InputException {
        Part slurs = Parts.read(
                Path.of("src/test/resources/tuttarco/score/bowing/slurs-and-ties.musicxml"), Instrument.VIOLIN);
        assertEquals(
                List.of("1", "2", "same stroke", "by the slur", ""),
                new BowingStrip(slurs).table().rows().get(1));
        assertEquals(
                List.of("2", "1", "same stroke", "by the tie", ""),
                new BowingStrip(slurs).table().rows().get(4));
    }

    /** Each awkward place has its cell, a number under it and a sentence below: none needs colour to be seen. */
    @Test
    void awkwardPlacesAreNumberedAndSaid() throws Exception {
        String svg = ChartFiles.svg(chart());
        assertTrue(svg.contains(">1</text>") && svg.contains(">3</text>"), svg);
        assertTrue(svg.contains("3  Bar 4 beat 4: two down-bows are marked in a row"), svg);
    }
}
