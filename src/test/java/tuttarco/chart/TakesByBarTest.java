package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.compare.Verdict;
import tuttarco.season.Records;
import tuttarco.season.TakeAgainstTake;

class TakesByBarTest extends ChartContract {
    private static final int PLAYERS = 8;

    /** Players 6 and 7 no longer turned in bars 5 to 8; player 2 not seen in bar 3. */
    private static Chart of(String names) {
        Records first = Records.bars(1, 16, PLAYERS).as(Verdict.UNSEEN, 2, 2, 4);
        Records middle = Records.bars(1, 16, PLAYERS).against(7, 4, 4);
        for (int bar = 4; bar < 8; bar++) {
            first.against(6, bar, 4).against(7, bar, 4);
        }
        return new TakesByBar(TakeAgainstTake.among(List.of(
                first.take("Tuesday", names),
                middle.take("Thursday", names),
                Records.bars(1, 16, PLAYERS).against(1, 15, 1).take("Friday", names))));
    }

    @Override
    Chart chart() {
        return of("p");
    }

    @Override
    Chart chartNaming(String label) {
        return of(label);
    }

    /** Of 127 bars read in both takes eight were turned first, and one beat of another last. */
    @Test
    void titleSaysWhatBecameOfTheSection() {
        assertEquals("More with the marking than at first: 94 %, now 100 %", chart().title());
        Chart same = new TakesByBar(TakeAgainstTake.among(
                List.of(Records.bars(1, 4, 2).take("a"), Records.bars(1, 4, 2).take("b"))));
        assertEquals("No change with the marking is shown: 100 %, now 100 %", same.title());
    }

    @Test
    void tableHasEachTakeAndEachPlayer() {
        ChartTable table = chart().table();
        assertEquals(
                List.of("Bar", "1. Tuesday", "2. Thursday", "3. Friday", "p0"),
                table.headings().subList(0, 5));
        List<String> fifth = table.rows().get(4);
        assertEquals(List.of("5", "75 %", "88 %", "100 %", "100 % to 100 %"), fifth.subList(0, 5));
        assertEquals("0 % to 100 %", fifth.get(4 + 7));
        assertEquals("–", table.rows().get(2).get(4 + 2));
    }

    @Test
    void withNothingInCommonThereIsNoChart() {
        List<TakeAgainstTake> apart = TakeAgainstTake.among(
                List.of(Records.bars(1, 4, 2).take("a"), Records.bars(5, 8, 2).take("b")));
        assertThrows(IllegalArgumentException.class, () -> new TakesByBar(apart));
    }
}
