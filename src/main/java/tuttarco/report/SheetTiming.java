package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.compare.PlayerTiming.Measured;
import tuttarco.compare.Timing;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;

/** When a player changes bow, told to the player: in hundredths of a second, which is as fine as it is known. */
final class SheetTiming {
    private static final double MS_PER_HUNDREDTH = 10;

    /** Within this, milliseconds, changes pass as together. */
    private static final double TOGETHER_MS = 1000 * CompareSettings.DEFAULT.toleranceS();

    private final Timing timing;
    private final Optional<PlayerTiming> own;

    SheetTiming(Timing timing, Player player) {
        this.timing = timing;
        this.own =
                timing.players().stream().filter(p -> p.player().equals(player)).findFirst();
    }

    /** What may be praised: together, and steady. */
    List<String> well() {
        List<String> well = new ArrayList<>();
        enough().filter(p -> p.claim() == Claim.NONE && together(p.lag().orElseThrow()))
                .map(p -> "You changed bow together with " + whom() + ", less than a tenth of a second apart ("
                        + p.changes() + " changes).")
                .ifPresent(well::add);
        enough().filter(p -> p.lag().orElseThrow().spreadMs() <= TOGETHER_MS)
                .map(p -> "You kept steady from change to change: the middle half of your changes lay within "
                        + hundredths(
                                Math.max(MS_PER_HUNDREDTH, p.lag().orElseThrow().spreadMs())) + ".")
                .ifPresent(well::add);
        return well;
    }

    private Optional<PlayerTiming> enough() {
        return own.filter(p -> p.claim() != Claim.TOO_FEW && p.lag().isPresent());
    }

    /** Whether the median surely lies where changes pass as together, and a lag beyond that would have been seen. */
    private static boolean together(Measured lag) {
        Interval interval = lag.intervalMs();
        return Math.max(-interval.low(), interval.high()) <= TOGETHER_MS && lag.smallestMs() <= TOGETHER_MS;
    }

    /** What is known, and how surely. */
    List<String> said(boolean leader) {
        if (own.isEmpty()) {
            return List.of(
                    leader
                            ? "You lead: the others' bow changes are measured from yours."
                            : "When you changed bow could not be measured this time.");
        }
        List<String> said = new ArrayList<>(List.of(told(own.get())));
        if (own.get().claim() != Claim.TOO_FEW) {
            said.add(
                    timing.toLeader()
                            ? "Your leader's changes are only the measure here; they need not be the right ones."
                            : "The others' changes are only the measure here; they need not be the right ones.");
        }
        return said;
    }

    private String told(PlayerTiming player) {
        return switch (player.claim()) {
            case LATE -> apart(player, "after");
            case EARLY -> apart(player, "before");
            case NONE ->
                "Your bow was not clearly before " + whose() + " nor clearly after"
                        + player.lag()
                                .map(l -> ": " + between(l.intervalMs()) + ", by " + player.changes()
                                        + " changes. In this film less than " + hundredths(l.smallestMs())
                                        + " can't be told")
                                .orElse("")
                        + ".";
            case TOO_FEW ->
                (player.changes() == 0 ? "None" : "Only " + player.changes())
                        + " of your bow changes could be set beside " + whose() + ", and it takes "
                        + Timing.LEAST_CHANGES + " to say anything.";
        };
    }

    private String apart(PlayerTiming player, String side) {
        Measured lag = player.lag().orElseThrow();
        return "Your bow changed a little " + side + " " + whose() + ": by about " + hundredths(lag.medianMs())
                + ". That is not quite certain; it may be " + between(lag.intervalMs()) + " (" + player.changes()
                + " changes).";
    }

    private String whom() {
        return timing.toLeader() ? "your leader" : "most of the others";
    }

    private String whose() {
        return timing.toLeader() ? "your leader's" : "most of the others'";
    }

    private static String hundredths(double ms) {
        long hundredths = rounded(Math.abs(ms));
        return hundredths == 0 ? "less than 1 hundredth of a second" : words(hundredths);
    }

    private static String words(long hundredths) {
        return hundredths + (hundredths == 1 ? " hundredth" : " hundredths") + " of a second";
    }

    /** {@code 5 to 8 hundredths of a second after}, {@code from 1 hundredth of a second before to 3 after}. */
    private static String between(Interval ms) {
        long low = rounded(ms.low());
        long high = rounded(ms.high());
        if (low == 0 && high == 0) {
            return "at the same moment";
        }
        if (low < 0 && high > 0) {
            return "from " + words(-low) + " before to " + high + " after";
        }
        long near = Math.min(Math.abs(low), Math.abs(high));
        long far = Math.max(Math.abs(low), Math.abs(high));
        return (near == far ? "" : near + " to ") + words(far) + (high > 0 ? " after" : " before");
    }

    private static long rounded(double ms) {
        return Math.round(ms / MS_PER_HUNDREDTH);
    }
}
