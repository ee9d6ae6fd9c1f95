package tuttarco.season;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tuttarco.season.Changed.Claim;
import tuttarco.stats.Holm;
import tuttarco.take.Bowing;

/**
 * Says which of the figures tried of two takes changed.
 *
 * <p>A change is claimed where three things hold. Pairs lie to one side more than chance would have it (signed-rank test;
 * Student's paired test for the sound and for the section's share, where a bar turned as a whole weighs more than misread beats
 * in many). Half of the one in twenty that may be claimed wrongly goes to the section's share, the other half by Holm's
 * procedure to all else of which enough pairs differ. And the change is no smaller than errors of reading may make it: a player
 * who is badly seen in one of the takes is misread in many bars, which no number of bars averages out.
 */
record Claims(TakeOnRecord first, TakeOnRecord second) {
    private static final double ONE_IN_TWENTY = 0.05;

    /** @param tried the section's share first, where there is one: its error is shared with no other */
    List<Changed> of(List<Tried> tried) {
        List<OptionalDouble> ps = adjusted(tried);
        List<Changed> changes = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            Tried t = tried.get(i);
            changes.add(new Changed(
                    t.metric(),
                    t.of(),
                    t.name(),
                    t.differences().size(),
                    t.before(),
                    t.after(),
                    ps.get(i),
                    claim(t, ps.get(i)),
                    t.paired()));
        }
        return changes;
    }

    /** Half of the error goes to the first, the other half to all others together. */
    private static List<OptionalDouble> adjusted(List<Tried> tried) {
        List<OptionalDouble> ps = new ArrayList<>(tried.stream().map(Tried::p).toList());
        List<Integer> asked = new ArrayList<>();
        for (int i = 1; i < ps.size(); i++) {
            if (ps.get(i).isPresent()) {
                asked.add(i);
            }
        }
        List<Double> holm =
                Holm.adjusted(asked.stream().map(i -> ps.get(i).getAsDouble()).toList());
        for (int k = 0; k < asked.size(); k++) {
            ps.set(asked.get(k), OptionalDouble.of(Math.min(1, 2 * holm.get(k))));
        }
        if (!ps.isEmpty() && ps.get(0).isPresent()) {
            ps.set(0, OptionalDouble.of(Math.min(1, 2 * ps.get(0).getAsDouble())));
        }
        return ps;
    }

    private Claim claim(Tried tried, OptionalDouble p) {
        if (tried.differences().size() < Tried.LEAST_PAIRS) {
            return Claim.TOO_FEW;
        }
        if (p.isEmpty() || p.getAsDouble() > ONE_IN_TWENTY || !tried.oneSided()) {
            return Claim.NONE;
        }
        return switch (tried.metric()) {
            case WITH_MARKING, WITH_LEADER ->
                both(Bowing.UNIFIED) ? better(tried.after() > tried.before()) : Claim.OTHERWISE;
            case LAG -> better(Math.abs(tried.after()) < Math.abs(tried.before()));
            case CHANGE_SPREAD -> better(tried.after() < tried.before());
            case LOUDNESS_SPREAD, DIP -> both(Bowing.FREE) ? better(tried.after() < tried.before()) : Claim.OTHERWISE;
            default -> throw new IllegalStateException("nothing is claimed of " + tried.metric());
        };
    }

    private boolean both(Bowing bowing) {
        return first.bowing() == bowing && second.bowing() == bowing;
    }

    private static Claim better(boolean better) {
        return better ? Claim.BETTER : Claim.WORSE;
    }
}
