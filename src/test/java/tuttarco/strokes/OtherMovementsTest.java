package tuttarco.strokes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.Gesture;

/** What an arm does is put together here from half sines of known length, way and curve. */
class OtherMovementsTest {
    private static final Player PLAYER = new Player(
            "player", 1, Place.OUTSIDE, Instrument.VIOLIN, new SeatBox(0, 0, 100, 100), Optional.empty(), false);
    private static final double FRAMES_PER_S = 30;

    /** The way of a usual stroke, shoulder widths, and how long it takes, seconds. */
    private static final double WAY = 0.45;

    private static final double STROKE_S = 0.6;
    private static final double STRAIGHT = 0.05;

    private final List<ArmSample> samples = new ArrayList<>();
    private double atS;

    /** One half sine of velocity, positive ways towards the tip; across it the same times {@code curve}. */
    private OtherMovementsTest swing(double lengthS, double way, double curve) {
        for (double startS = atS; nextS() < startS + lengthS; ) {
            double speed = Math.PI / 2 * way / lengthS * Math.sin(Math.PI * (nextS() - startS) / lengthS);
            add(speed, new Gesture(curve * speed, 0));
        }
        atS += lengthS;
        return this;
    }

    private OtherMovementsTest rest(double lengthS) {
        return swing(lengthS, 0, 0);
    }

    private OtherMovementsTest strokes(int count) {
        for (int i = 0; i < count; i++) {
            swing(STROKE_S, i % 2 == 0 ? WAY : -WAY, STRAIGHT);
        }
        return this;
    }

    /** To and fro by so much and then a pause. */
    private OtherMovementsTest plucks(int count, double way) {
        for (int i = 0; i < count; i++) {
            swing(0.15, way, STRAIGHT).swing(0.15, -way, STRAIGHT).rest(0.25);
        }
        return this;
    }

    /** Only trembling is left of motion that is too quick. */
    private OtherMovementsTest trembling(double lengthS) {
        for (double startS = atS; nextS() < startS + lengthS; ) {
            add(0, new Gesture(0, 0.8));
        }
        atS += lengthS;
        return this;
    }

    private double nextS() {
        return (samples.size() + 0.5) / FRAMES_PER_S;
    }

    private void add(double velocity, Gesture gesture) {
        samples.add(new ArmSample.ByBody(nextS(), velocity, 0.03, 1, 1, gesture));
    }

    private ArmTrack track() {
        return new ArmTrack(PLAYER, 0, atS, samples);
    }

    private Reading read() {
        return new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT).read(track());
    }

    private List<Stroke> told() {
        return OtherMovements.told(read(), track()).strokes();
    }

    private static List<Stroke> within(List<Stroke> strokes, double startS, double endS) {
        return strokes.stream()
                .filter(s -> s.startS() < endS && s.endS() > startS)
                .toList();
    }

    private static boolean claimed(Stroke stroke) {
        return stroke.kind().direction().isPresent();
    }

    @Test
    void bowingStaysAsItWasRead() {
        rest(1).strokes(12).rest(1);
        assertEquals(12, told().stream().filter(OtherMovementsTest::claimed).count());
        assertEquals(read().strokes(), told());
    }

    /** A thumb's breadth and an inch or two, of a shoulder width of about 36 cm. */
    @ParameterizedTest
    @ValueSource(doubles = {0.06, 0.1, 0.13})
    void pluckingIsStill(double way) {
        rest(1).plucks(15, way).rest(1);
        assertTrue(read().strokes().stream().anyMatch(OtherMovementsTest::claimed));
        assertTrue(told().stream().allMatch(s -> s.kind() == StrokeKind.STILL), told().toString());
    }

    @Test
    void pluckingBetweenStrokesIsStillAndTheStrokesStay() {
        rest(1).strokes(8).rest(0.5);
        double fromS = atS;
        plucks(10, 0.08).rest(0.5);
        double toS = atS;
        strokes(8).rest(1);
        List<Stroke> told = told();
        assertEquals(16, told.stream().filter(OtherMovementsTest::claimed).count(), told.toString());
        assertTrue(
                within(told, fromS + 0.05, toS - 0.05).stream().noneMatch(OtherMovementsTest::claimed),
                told.toString());
    }

    /** As for a page that is turned, twice in a quarter of a minute. */
    @Test
    void ofWhoOnlyReachesForSomethingNothingIsClaimed() {
        rest(3).swing(0.7, 0.6, 0.2).swing(1.4, -1.2, 0.2).rest(4);
        swing(0.7, 0.6, 0.2).swing(1.4, -1.2, 0.2).rest(3);
        assertTrue(read().strokes().stream().anyMatch(OtherMovementsTest::claimed));
        assertTrue(told().stream().noneMatch(OtherMovementsTest::claimed), told().toString());
    }

    /** A page turned with the left hand looks so: two or three movements, then a rest. */
    @Test
    void threeMovementsInTurnAreNoBowingHoweverOften() {
        for (int i = 0; i < 5; i++) {
            rest(1).strokes(3);
        }
        rest(1);
        assertTrue(read().strokes().stream().anyMatch(OtherMovementsTest::claimed));
        assertTrue(told().stream().noneMatch(OtherMovementsTest::claimed), told().toString());
    }

    /** Patting the thigh, five times a second: strokes could be as quick, but nobody plays nothing else. */
    @Test
    void ofWhoOnlyGoesToAndFroQuicklyNothingIsClaimed() {
        rest(1);
        for (int i = 0; i < 60; i++) {
            swing(0.2, i % 2 == 0 ? 0.2 : -0.2, STRAIGHT);
        }
        rest(1);
        assertTrue(read().strokes().stream().anyMatch(OtherMovementsTest::claimed));
        assertTrue(told().stream().noneMatch(OtherMovementsTest::claimed), told().toString());
    }

    @Test
    void quickStrokesBesideLongerOnesAreBelieved() {
        rest(1).strokes(4);
        double fromS = atS;
        for (int i = 0; i < 20; i++) {
            swing(0.2, i % 2 == 0 ? 0.2 : -0.2, STRAIGHT);
        }
        double toS = atS;
        rest(1);
        long claimed = within(told(), fromS + 0.05, toS - 0.05).stream()
                .filter(OtherMovementsTest::claimed)
                .count();
        assertTrue(claimed > 15, told().toString());
    }

    @Test
    void whoBowsFourStrokesInTurnOnceBowsThreeElsewhereToo() {
        for (int i = 0; i < 5; i++) {
            rest(1).strokes(i == 2 ? 4 : 3);
        }
        rest(1);
        assertEquals(16, told().stream().filter(OtherMovementsTest::claimed).count(), told().toString());
    }

    /** Down-bows between which the bow is brought back through the air: more quickly, and in a bow of its own. */
    @Test
    void aBowThatIsSetAnewIsStill() {
        rest(1).strokes(6);
        double fromS = atS;
        swing(STROKE_S, WAY, STRAIGHT).swing(0.3, -WAY, 0.6).swing(STROKE_S, WAY, STRAIGHT);
        double toS = atS;
        swing(STROKE_S, -WAY, STRAIGHT).strokes(4).rest(1);
        List<StrokeKind> kinds = within(told(), fromS + 0.05, toS - 0.05).stream()
                .map(Stroke::kind)
                .toList();
        assertEquals(List.of(StrokeKind.DOWN, StrokeKind.STILL, StrokeKind.DOWN), kinds);
    }

    @Test
    void whatIsTooQuickBetweenStrokesIsTremolo() {
        rest(1).strokes(8);
        double fromS = atS;
        trembling(3);
        double toS = atS;
        strokes(8).rest(1);
        List<Stroke> tremolo =
                told().stream().filter(s -> s.kind() == StrokeKind.TREMOLO).toList();
        assertEquals(1, tremolo.size(), told().toString());
        assertEquals(fromS, tremolo.get(0).startS(), 0.2);
        assertEquals(toS, tremolo.get(0).endS(), 0.2);
        assertTrue(tremolo.get(0).confidence() > 0.9, tremolo.toString());
    }

    /** A bow that is shaken in applause trembles too. */
    @Test
    void ofWhoOnlyTremblesNoTremoloIsClaimed() {
        rest(1).trembling(8).rest(1);
        assertTrue(told().stream().noneMatch(s -> s.kind() == StrokeKind.TREMOLO), told().toString());
    }

    @Test
    void whatIsUnseenStaysUnseen() {
        ArmTrack nothing = new ArmTrack(PLAYER, 0, 3, List.of());
        Reading read = new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT).read(nothing);
        assertEquals(
                List.of(new Stroke(0, 3, StrokeKind.UNSEEN, 1)),
                OtherMovements.told(read, nothing).strokes());
    }
}
