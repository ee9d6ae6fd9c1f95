package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tuttarco.chart.SectionFixture;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class CsvOutputsTest {
    @Nested
    class Strokes extends OutputContract {
        @Override
        Output output() {
            return new StrokesCsv();
        }

        @Test
        void columnsAndFiguresAreThePublishedOnes() throws Exception {
            List<String> lines = written(Fixtures.unified()).lines().toList();
            assertEquals(1 + 8 * 50, lines.size());
            assertEquals("player,start_s,end_s,direction,confidence", lines.get(0));
            assertEquals("Desk 1 outside,0.0000,1.0000,still,0.990", lines.get(1));
            assertEquals("Desk 1 outside,1.0000,1.5000,down,0.970", lines.get(2));
            assertEquals("Desk 4 inside,17.0000,17.5000,unseen,0.970", lines.get(1 + 7 * 50 + 33));
        }

        @Test
        void aStrokeEndsWhereTheNextBeginsAsPrinted() throws Exception {
            Reading reading = new Reading(
                    SectionFixture.clean(1, 4).players.get(0),
                    List.of(
                            new Stroke(0, 0.12345, StrokeKind.DOWN, 1),
                            new Stroke(0.12345 + 4e-10, 0.12346, StrokeKind.STILL, 1),
                            new Stroke(0.12346, 2, StrokeKind.UP, 0.5)));
            StringWriter out = new StringWriter();
            StrokesCsv.write(List.of(reading), out);
            List<String> lines = out.toString().lines().toList();
            assertEquals(3, lines.size(), "what has no length as printed is left out");
            assertEquals("Desk 1 outside,0.0000,0.1235,down,1.000", lines.get(1));
            assertEquals("Desk 1 outside,0.1235,2.0000,up,0.500", lines.get(2));
        }

        @Test
        void labelsThatLookLikeFormulasAreText() throws Exception {
            assertTrue(written(Fixtures.named("=1+1")).contains("\n'=1+1,0.0000"));
            assertTrue(written(Fixtures.named("A=1, \"b\"")).contains("\n\"A=1, \"\"b\"\"\",0.0000"));
        }
    }

    @Nested
    class OfBows extends OutputContract {
        @Override
        Output output() {
            return new BowsCsv();
        }

        @Test
        void columnsAndFiguresAreThePublishedOnes() throws Exception {
            List<String> lines = written(Fixtures.unified()).lines().toList();
            assertEquals(
                    "player,start_s,start_se_s,end_s,end_se_s,direction,length_shoulder_widths,length_share,region,"
                            + "region_confidence",
                    lines.get(0));
            // of eight players' 46 beats that do not rest one player misses 16, another is unsure of 4
            assertEquals(1 + 8 * 46 - 16 - 4, lines.size());
            assertTrue(
                    lines.get(1).matches("Desk 1 outside,1.0000,0.0\\d+,1.5000,0.0\\d+,down,0.396,1.000,unknown,"),
                    lines.get(1));
            assertTrue(lines.get(2).matches("Desk 1 outside,1.5000,.*,up,0.396,1.000,tip,0.875"), lines.get(2));
        }

        @Test
        void whatIsNotKnownIsLeftEmpty() throws Exception {
            Stroke stroke = new Stroke(0, 2, StrokeKind.UP, 0.9);
            Bow bow = new Bow(
                    stroke, new Edge.ClipEnd(), new Edge.Change(0.0125), new BowUse.Unknown(BowUse.Reason.UNCLEAR));
            new BowsCsv()
                    .write(List.of(new Bows(SectionFixture.clean(1, 4).players.get(0), List.of(bow))), folder);
            assertEquals(
                    "Desk 1 outside,0.0000,,2.0000,0.0125,up,,,unknown,",
                    Files.readAllLines(folder.resolve("bows.csv")).get(1));
        }
    }

    @Nested
    class Beats extends OutputContract {
        @Override
        Output output() {
            return new BeatsCsv();
        }

        @Test
        void columnsAndFiguresAreThePublishedOnes() throws Exception {
            List<String> lines = written(Fixtures.unified()).lines().toList();
            assertEquals(1 + 8 * 48, lines.size());
            assertEquals("player,bar,beat,time_s,marked,played,confidence,verdict,leader_verdict", lines.get(0));
            assertEquals("Desk 1 outside,1,1,1.0000,down,down,0.970,with,rest", lines.get(1));
            assertEquals("Desk 1 outside,6,3,12.0000,rest,still,0.970,rest,rest", lines.get(23));
            assertEquals("Desk 3 inside,3,1,5.0000,down,up,0.970,against,against", lines.get(1 + 5 * 48 + 8));
            assertEquals("Desk 2 outside,8,1,15.0000,down,unsure,0.500,unsure,unsure", lines.get(1 + 2 * 48 + 28));
        }

        @Test
        void withoutAPartNothingIsMarked() throws Exception {
            List<String> lines = written(Fixtures.withoutPart()).lines().toList();
            assertEquals("Desk 1 outside,1,1,1.0000,none,down,0.970,rest,rest", lines.get(1));
        }
    }

    @Nested
    class Lags extends OutputContract {
        @Override
        Output output() {
            return new LagsCsv();
        }

        /** Every player but the leader and one more has forty changes, five milliseconds later than the one before. */
        @Test
        void hasOneLineAPairedChange() throws Exception {
            AnalysedTake take = Fixtures.unified();
            output().write(take, folder);
            List<String> lines = Files.readAllLines(folder.resolve("lags.csv"));
            assertEquals("player,bar,beat,time_s,lag_ms", lines.get(0));
            assertEquals(1 + 40 * (take.comparison().players().size() - 2), lines.size());
            assertEquals("Desk 1 inside,1,2,1.5000,5", lines.get(1));
        }
    }

    @Nested
    class Metrics extends OutputContract {
        @Override
        Output output() {
            return new MetricsCsv();
        }

        /** Of eight players 46 beats each, 16 are unseen, 4 unsure and 8 against. */
        @Test
        void columnsAndFiguresAreThePublishedOnes() throws Exception {
            List<String> lines = written(Fixtures.unified()).lines().toList();
            assertEquals("metric,scope,name,time_s,count,value,low,high,unit", lines.get(0));
            assertTrue(lines.get(1).startsWith("with-marking,take,,,348,0.977,0.9"), lines.get(1));
            assertTrue(lines.contains("alpha,bar,1,1.0000,4,1.000,,,1"));
            assertTrue(lines.contains("lag,player,Desk 4 inside,,0,,,,ms"), "what is not known is left empty");
        }
    }

    @Nested
    class Divergences extends OutputContract {
        @Override
        Output output() {
            return new DivergencesCsv();
        }

        @Test
        void columnsAndFiguresAreThePublishedOnes() throws Exception {
            assertEquals("""
                    first_bar,first_beat,last_bar,last_beat,players,against,confidence,first_time_s,last_time_s,standing,back_bar,back_beat,back_time_s,way_back
                    3,1,4,4,Desk 3 inside,marking,0.930,5.0000,8.5000,turned,5,1,9.0000,retake
                    3,1,4,4,Desk 3 inside,leader,0.930,5.0000,8.5000,turned,5,1,9.0000,retake
                    """, written(Fixtures.unified()));
        }

        @Test
        void severalPlayersAreJoined() throws Exception {
            List<String> lines = written(Fixtures.free()).lines().toList();
            assertEquals(
                    "1,1,12,4,Desk 1 inside; Desk 2 inside; Desk 3 inside; Desk 4 inside,marking,0.930,1.0000,24.5000,turned,,,,",
                    lines.get(1));
        }
    }
}
