package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.compare.Divergence;
import tuttarco.compare.Divergence.Against;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

class BowMotionTest extends ChartContract {
    @Override
    Chart chart() {
        return motion(SectionFixture.unified(), 5);
    }

    @Override
    Chart chartNaming(String label) {
        return motion(SectionFixture.named(label), 0);
    }

    private static BowMotion motion(SectionFixture fixture, int p) {
        List<Divergence> spots = Spots.of(fixture.players.get(p), fixture.comparison.divergences(), Against.MARKING);
        return new BowMotion(
                p + 1,
                fixture.tracks.get(p),
                Bows.of(fixture.tracks.get(p), fixture.readings.get(p)),
                fixture.beats,
                spots);
    }

    @Test
    void titleSaysWhatHappened() {
        assertEquals("Desk 3 inside turned in bars 3–4", chart().title());
    }

    /** 48 beats of 0.5 s and two still seconds, all but four beats read: 24 of 26 s. */
    @Test
    void titleOfAPlayerWhoStayedSaysHowMuchWasRead() {
        assertEquals(
                "Desk 2 outside: the arm was read for 92 % of the take",
                motion(SectionFixture.unified(), 2).title());
    }

    @Test
    void longTakesBreakIntoRowsOfTwentySeconds() {
        Chart short24s = motion(SectionFixture.clean(1, 36), 0);
        Chart long80s = motion(SectionFixture.clean(1, 156), 0);
        assertEquals(short24s.widthPx(), long80s.widthPx());
        assertEquals(3 * 196, long80s.heightPx() - short24s.heightPx());
    }

    @Test
    void tableListsTheStrokes() {
        List<List<String>> rows = chart().table().rows();
        assertEquals(50, rows.size());
        assertEquals(List.of("0:01.0", "0:01.5", "down", "97 %"), rows.get(1));
        assertEquals(List.of("0:05.0", "0:05.5", "up", "97 %"), rows.get(9));
    }

    /** The integral of a half-sine stroke is its travel; forgetting takes away at most T / FORGET_S of it. */
    @Test
    void aStrokeTravelsItsLength() {
        SectionFixture fixture = SectionFixture.clean(1, 4);
        List<List<BowTravel.Point>> stretches = BowTravel.of(fixture.tracks.get(0));
        assertEquals(1, stretches.size());
        double top = stretches.get(0).stream()
                .mapToDouble(BowTravel.Point::travel)
                .max()
                .orElseThrow();
        double forgotten = SectionFixture.TRAVEL * SectionFixture.BEAT_S / BowTravel.FORGET_S;
        assertTrue(top <= SectionFixture.TRAVEL && top >= SectionFixture.TRAVEL - forgotten, "top " + top);
    }

    @Test
    void lostArmsBreakTheCurve() {
        List<ArmSample> samples = List.of(
                new ArmSample.ByFlow(0, 1, 0.1, 1),
                new ArmSample.ByFlow(0.1, 1, 0.1, 1),
                new ArmSample.Lost(0.2, ArmSample.Reason.TOO_DARK),
                new ArmSample.ByFlow(0.3, 1, 0.1, 1),
                new ArmSample.ByFlow(0.4, 1, 0.1, 1));
        ArmTrack track = new ArmTrack(SectionFixture.clean(1, 4).players.get(0), 0, 0.5, samples);
        List<List<BowTravel.Point>> stretches = BowTravel.of(track);
        assertEquals(2, stretches.size());
        assertEquals(0, stretches.get(1).get(0).travel());
        assertEquals(0.1, stretches.get(1).get(1).travel(), 1e-9);
        assertEquals(0.01, stretches.get(1).get(1).error(), 1e-9);
    }

    @Test
    void turnedWordsAreTextToo() {
        assertTrue(ChartFiles.svg(chart()).contains(">to the tip, shoulder widths<"));
    }

    @Test
    void anUnseenPlayerStillHasAChart() throws Exception {
        parsed(ChartFiles.svg(motion(SectionFixture.nothingSeen(), 3)));
    }

    /** Of the strokes that are read, the third is set the other way, and the change before the fifth is moved. */
    @Test
    void whatWasSetByHandSaysSo() {
        SectionFixture fixture = SectionFixture.unified();
        Reading read = fixture.readings.get(0);
        List<Stroke> strokes = new ArrayList<>(read.strokes());
        Stroke third = strokes.get(2);
        strokes.set(2, Stroke.byHand(third.startS(), third.endS(), StrokeKind.ABSENT));
        Stroke fourth = strokes.get(3);
        double movedS = fourth.endS() - 0.1;
        strokes.set(3, fourth.during(fourth.startS(), movedS));
        strokes.set(4, strokes.get(4).during(movedS, strokes.get(4).endS()));
        Bows bows = Bows.corrected(fixture.tracks.get(0), read, new Reading(read.player(), strokes));
        BowMotion chart = new BowMotion(1, fixture.tracks.get(0), bows, fixture.beats, List.of());
        List<List<String>> rows = chart.table().rows();
        assertEquals("absent, by hand", rows.get(2).get(2));
        assertTrue(rows.get(3).get(1).endsWith(", by hand"), rows.get(3).toString());
        assertTrue(rows.get(4).get(0).endsWith(", by hand"), rows.get(4).toString());
        assertEquals(
                3, rows.stream().filter(r -> r.toString().contains("by hand")).count());
        assertTrue(chart.help().contains("set by hand"), chart.help());
        assertFalse(motion(fixture, 0).help().contains("by hand"));
    }
}
