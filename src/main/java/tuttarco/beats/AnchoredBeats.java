package tuttarco.beats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * Beats of another source, corrected by anchors: beats whose times somebody knows. Every anchor's beat gets the anchor's
 * time. Between two anchors of a run the source's times are stretched or squeezed evenly; before its first and after its
 * last they are shifted. A run without an anchor stays as it is: after a stop the source began anew, and so did its error.
 *
 * <p>Where a beat is played more than once, the playing nearest to the anchor is meant.
 *
 * @param anchors in time order, once this is made; a standard error of theirs is not looked at
 */
public record AnchoredBeats(BeatSource source, List<Beat> anchors) implements BeatSource {
    /** Error of an anchor, seconds: that of a time rounded to a tenth of a second. */
    static final double ANCHOR_STDERR_S = 0.1 / Math.sqrt(12);

    /** A run's first anchor further from its beat is a slip or means another place; seconds (chosen). */
    private static final double FURTHEST_S = 10;

    /** So much the time between two anchors may always differ from the source's; seconds (chosen: a beat misheard). */
    private static final double SLACK_S = 1;

    /** Beyond that the source's tempo between two anchors may be off by this factor (chosen: beats for half beats). */
    private static final double MOST_STRETCH = 2;

    public AnchoredBeats {
        anchors =
                anchors.stream().sorted(Comparator.comparingDouble(Beat::timeS)).toList();
        if (anchors.isEmpty()) {
            throw new IllegalArgumentException("beats are corrected by one anchor at least");
        }
    }

    @Override
    public BeatMap beats() throws InputException {
        return told().beats();
    }

    @Override
    public Told told() throws InputException {
        Told told = source.told();
        return new Told(corrected(told.beats()), told.notes());
    }

    private BeatMap corrected(BeatMap map) throws InputException {
        List<Beat> given = map.beats();
        List<Pin> pins = pins(map);
        List<Beat> corrected = new ArrayList<>();
        for (Run run : map.runs()) {
            List<Pin> here = pins.stream().filter(pin -> run.holds(pin.index())).toList();
            List<Beat> beats = given.subList(run.firstIndex(), run.lastIndex() + 1);
            List<Beat> moved = here.isEmpty() ? beats : corrected(beats, run.firstIndex(), here);
            requireApart(corrected, moved);
            corrected.addAll(moved);
        }
        return new BeatMap(corrected, map.runs());
    }

    /** A run's beats, the first of which has a number among all, by the anchors in it, at least one. */
    private static List<Beat> corrected(List<Beat> given, int firstIndex, List<Pin> pins) {
        List<Beat> corrected = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < given.size(); i++) {
            int index = firstIndex + i;
            if (next < pins.size() - 1 && pins.get(next).index() < index) {
                next++;
            }
            Pin after = pins.get(next);
            Pin before = after.index() >= index && next > 0 ? pins.get(next - 1) : after;
            corrected.add(corrected(new Pin(index, given.get(i), given.get(i)), before, after));
        }
        return corrected;
    }

    private static void requireApart(List<Beat> before, List<Beat> after) throws InputException {
        if (before.isEmpty()) {
            return;
        }
        Beat last = before.get(before.size() - 1);
        Beat first = after.get(0);
        if (!(last.timeS() < first.timeS())) {
            throw new InputException("the anchors move " + Plain.text(last.spoken()) + " before the stop to "
                    + seconds(last.timeS()) + ", but " + Plain.text(first.spoken()) + " after it is at "
                    + seconds(first.timeS()) + "; give an anchor on either side of the stop");
        }
    }

    /** One of the source's beats, by its number among them, and the anchor that holds it. */
    private record Pin(int index, Beat given, Beat anchor) {
        double shiftS() {
            return anchor.timeS() - given.timeS();
        }

        /** The source's own error, seconds squared. */
        double varianceS2() {
            return square(given.stderrS().orElse(Double.NaN));
        }

        @Override
        public String toString() {
            return Plain.text(anchor.spoken()) + " at " + seconds(anchor.timeS());
        }
    }

    private List<Pin> pins(BeatMap map) throws InputException {
        List<Pin> pins = new ArrayList<>();
        for (Beat anchor : anchors) {
            Pin pin = pin(anchor, map.beats());
            Pin before = pins.isEmpty() ? null : pins.get(pins.size() - 1);
            if (before != null) {
                requireAfter(before, pin);
            }
            if (before != null && map.runOf(before.index()).holds(pin.index())) {
                requirePace(before, pin);
            } else {
                requireNear(pin);
            }
            pins.add(pin);
        }
        return pins;
    }

    private static Pin pin(Beat anchor, List<Beat> given) throws InputException {
        Pin nearest = null;
        for (int i = 0; i < given.size(); i++) {
            Pin pin = new Pin(i, given.get(i), anchor);
            boolean meant =
                    pin.given().bar().equals(anchor.bar()) && pin.given().beat() == anchor.beat();
            if (meant && (nearest == null || Math.abs(pin.shiftS()) < Math.abs(nearest.shiftS()))) {
                nearest = pin;
            }
        }
        if (nearest == null) {
            throw new InputException("the anchor names " + Plain.text(anchor.spoken())
                    + ", which is not among the beats it should correct, from "
                    + Plain.text(given.get(0).spoken()) + " to "
                    + Plain.text(given.get(given.size() - 1).spoken())
                    + "; number its bar as printed in the part and take a beat that is there");
        }
        return nearest;
    }

    private static void requireNear(Pin first) throws InputException {
        if (Math.abs(first.shiftS()) > FURTHEST_S) {
            throw new InputException("the anchor " + first + " lies far from that beat, which is at "
                    + seconds(first.given().timeS())
                    + " without it; correct the anchor, or where the beats begin");
        }
    }

    private static void requireAfter(Pin before, Pin pin) throws InputException {
        if (pin.index() <= before.index()
                || !(pin.anchor().timeS() > before.anchor().timeS())) {
            throw new InputException("the anchors " + before + " and " + pin
                    + " contradict each other, since each beat is later than those before it; correct one of them");
        }
    }

    private static void requirePace(Pin before, Pin pin) throws InputException {
        double anchoredS = pin.anchor().timeS() - before.anchor().timeS();
        double givenS = pin.given().timeS() - before.given().timeS();
        double stretch = Math.max(givenS / anchoredS, anchoredS / givenS);
        if (Math.abs(anchoredS - givenS) > SLACK_S && stretch > MOST_STRETCH) {
            throw new InputException("the anchors " + before + " and " + pin + " are " + seconds(anchoredS)
                    + " apart, which is far from the " + seconds(givenS)
                    + " without them; correct the anchors or the beats");
        }
    }

    private static Beat corrected(Pin beat, Pin before, Pin after) {
        double gapS = after.given().timeS() - before.given().timeS();
        double share = gapS > 0 ? (beat.given().timeS() - before.given().timeS()) / gapS : 0;
        double shiftS = (1 - share) * before.shiftS() + share * after.shiftS();
        boolean anchored = beat.index() == before.index() || beat.index() == after.index();
        return new Beat(
                beat.given().bar(),
                beat.given().beat(),
                beat.given().timeS() + shiftS,
                anchored ? OptionalDouble.of(ANCHOR_STDERR_S) : stderrS(beat, before, after, share),
                anchored ? Beat.ANCHOR : beat.given().source());
    }

    /**
     * That of the source at the beat and of the shift, which has the source's errors at the anchors and those of the
     * anchors. The source's errors are taken for independent: on 704 beats heard in synthesised sound their correlation
     * was 0.14 from one beat to the next and 0.08 four beats apart.
     */
    private static OptionalDouble stderrS(Pin beat, Pin before, Pin after, double share) {
        double anchorS2 = square(ANCHOR_STDERR_S);
        double errorS2 = beat.varianceS2()
                + square(1 - share) * (before.varianceS2() + anchorS2)
                + square(share) * (after.varianceS2() + anchorS2);
        return Double.isNaN(errorS2) ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(errorS2));
    }

    private static double square(double x) {
        return x * x;
    }

    private static String seconds(double timeS) {
        return String.format(Locale.ROOT, "%.1f s", timeS);
    }
}
