package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.seats.Player;

/** What is said to whom; the takes are those of {@link tuttarco.chart.SectionFixture}. */
class SheetWordsTest {
    private static SheetModel sheet(AnalysedTake take, int player) {
        return new SheetWords(take, take.comparison().players().get(player)).model();
    }

    private static SheetModel.Section section(SheetModel sheet, String key) {
        return sheet.sections().stream()
                .filter(s -> s.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** All that is said on a sheet. */
    static Stream<String> words(SheetModel sheet) {
        return Stream.of(
                        Stream.of(
                                sheet.head().take(),
                                sheet.head().player(),
                                sheet.head().seat()),
                        sheet.head().opening().stream(),
                        sheet.sections().stream()
                                .flatMap(s -> Stream.of(
                                                Stream.of(s.heading()),
                                                s.said().stream(),
                                                s.places().stream()
                                                        .flatMap(p -> Stream.concat(
                                                                Stream.of(p.where(), p.clock()), p.said().stream())),
                                                s.closing().stream())
                                        .flatMap(x -> x)),
                        sheet.signs().stream().map(s -> s.title()),
                        sheet.care().stream())
                .flatMap(x -> x);
    }

    @Test
    void whoWasTurnedSeesFirstWhatWentWellThenTheBars() {
        SheetModel sheet = sheet(Fixtures.unified(), 5);
        assertEquals(
                List.of("What went well", "Bars to look at", "Your timing", "What the film could not show"),
                sheet.sections().stream().map(SheetModel.Section::heading).toList());
        assertEquals(
                "All through bars 1–2 and 5–12 your bow went as marked, as far as it could be read.",
                section(sheet, "well").said().get(0));
        SheetModel.Place place = section(sheet, "bars").places().get(0);
        assertEquals("Bar 3 beat 1 to bar 4 beat 4", place.where());
        assertEquals(
                List.of(
                        "For 8 beats your bow seems to have gone the other way than marked. You were back by bar 5, by a retake.",
                        "Your leader bowed as marked here.",
                        "The reading is 93 % sure."),
                place.said());
        assertEquals(
                List.of("down-bow", "up-bow", "other way than marked"),
                sheet.signs().stream().map(s -> s.title()).toList());
    }

    @Test
    void whoWasAsMarkedThroughoutSeesHow() {
        SheetModel sheet = sheet(Fixtures.unified(), 1);
        assertEquals(
                "Wherever your bow could be read, it went as marked: on all 46 beats.",
                section(sheet, "well").said().get(0));
        assertEquals("Bars 1–4", section(sheet, "well").places().get(0).where());
        assertEquals(
                List.of("None. Nowhere was your bow seen to go another way than marked for a stretch."),
                section(sheet, "bars").said());
    }

    /** Four beats a bar: bars 9 to 12 of player 8 are not seen, bar 8 of player 3 is unsure. */
    @Test
    void doubtIsSaidAsDoubt() {
        assertEquals(
                List.of("Not seen: 16 beats, in bars 9–12. An arm behind a stand or a neighbour can't be seen."),
                section(sheet(Fixtures.unified(), 7), "unseen").said());
        assertEquals(
                List.of("Seen, but not surely enough: 4 beats, in bar 8."),
                section(sheet(Fixtures.unified(), 2), "unseen").said());
        assertEquals(
                List.of("Nothing: all of your beats could be read."),
                section(sheet(Fixtures.unified(), 1), "unseen").said());
    }

    @Test
    void ofWhoWasNeverSeenNothingIsSaid() {
        SheetModel sheet = sheet(Fixtures.nothingSeen(), 3);
        assertEquals(
                List.of(
                        "This time the film shows too little of your bow to say. That tells nothing about how you played."),
                section(sheet, "well").said());
        assertEquals(
                List.of("Too little could be seen to say which."),
                section(sheet, "bars").said());
        assertEquals(
                List.of("None of your bow changes could be set beside your leader's, and it takes 6 to say anything."),
                section(sheet, "timing").said());
        assertTrue(sheet.signs().isEmpty());
    }

    @Test
    void whereEverybodyIsFreeNothingIsRightOrWrong() {
        SheetModel sheet = sheet(Fixtures.free(), 1);
        assertEquals(
                List.of("How your bow went", "What the film could not show"),
                sheet.sections().stream().map(SheetModel.Section::heading).toList());
        assertTrue(sheet.head().opening().get(0).contains("no way of bowing is right or wrong here"));
        assertEquals(
                List.of("down-bow", "up-bow"),
                sheet.signs().stream().map(s -> s.title()).toList());
    }

    @Test
    void withoutAPartTheLeaderIsWhatIsComparedWith() {
        AnalysedTake take = Fixtures.withoutPart();
        assertEquals(
                "For 8 beats your bow seems to have gone the other way than your leader's. You were back by bar 5, by a retake.",
                section(sheet(take, 5), "bars").places().get(0).said().get(0));
        assertEquals(
                List.of("Nothing is marked here, and you lead: there is nothing your bow could be compared with."),
                section(sheet(take, 0), "bars").said());
        assertEquals(
                List.of("Your bow was seen moving on 46 of the 48 beats."),
                section(sheet(take, 0), "well").said());
    }

    /** Bar 3 of six: the leader stays with the marking, three others don't. */
    @Test
    void whoIsBackSoonIsTold() {
        assertEquals(
                "When your bow had gone another way (bar 3 beat 1), you were back after only 4 beats.",
                section(sheet(Fixtures.mostTurned(), 1), "well").said().get(1));
    }

    /** The labels are names here; nobody finds another's on his or her sheet, not even the leader's. */
    @ParameterizedTest
    @MethodSource("tuttarco.report.OutputContract#takes")
    void nobodyElseIsNamed(AnalysedTake take) {
        for (int p = 0; p < take.comparison().players().size(); p++) {
            List<String> words = words(sheet(take, p)).toList();
            for (Player other : take.comparison().players()) {
                if (!other.equals(take.comparison().players().get(p))
                        && !other.label().equals(take.take().title())) {
                    assertFalse(
                            words.stream().anyMatch(w -> w.contains(other.label())), other.label() + " in " + words);
                }
            }
        }
    }
}
