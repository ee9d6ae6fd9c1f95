package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.chart.LagByPlayer;
import tuttarco.chart.Words;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.compare.Timing;
import tuttarco.seats.Player;

/** Who changes late or early, in sentences. */
final class LateWords {
    private final Timing timing;

    LateWords(Timing timing) {
        this.timing = timing;
    }

    List<String> sentences() {
        if (timing.players().isEmpty()) {
            return List.of(
                    "Nothing can be said: there is nobody whose bow changes could be compared with the leader's.");
        }
        List<String> sentences = new ArrayList<>();
        timing.claimed().stream().flatMap(p -> claimed(p).stream()).forEach(sentences::add);
        List<Player> unclear = players(Claim.NONE);
        if (!unclear.isEmpty()) {
            sentences.add((sentences.isEmpty() ? "Nobody is shown to be late or early. " : "") + notShown(unclear));
        }
        List<Player> few = players(Claim.TOO_FEW);
        if (!few.isEmpty()) {
            sentences.add("Of " + Words.names(few) + " too few changes could be compared to say anything; it takes "
                    + Timing.LEAST_CHANGES + ".");
        }
        sentences.add(
                timing.toLeader()
                        ? "The leader's changes are the measure, which does not make them the right ones."
                        : "There is no leader; the measure is the median of the others' changes, where at least three were seen.");
        return sentences;
    }

    private List<Player> players(Claim claim) {
        return timing.players().stream()
                .filter(p -> p.claim() == claim)
                .map(PlayerTiming::player)
                .toList();
    }

    private static Optional<String> claimed(PlayerTiming player) {
        return player.lag()
                .map(lag -> Words.plain(player.player().label()) + " changes "
                        + player.claim().word() + ", by " + Words.milliseconds(Math.abs(lag.medianMs()))
                        + ": the median of " + Words.count(player.changes(), "change") + ", 95 % interval "
                        + LagByPlayer.interval(lag) + ".");
    }

    private static String notShown(List<Player> unclear) {
        return "Of " + Words.names(unclear) + " no lag can be told from chance and from the errors of reading.";
    }

    /** About one player; nothing for whom the others are compared with. */
    Optional<String> of(Player player) {
        return timing.players().stream()
                .filter(p -> p.player().equals(player))
                .findFirst()
                .map(LateWords::ofOne);
    }

    private static String ofOne(PlayerTiming player) {
        return switch (player.claim()) {
            case LATE, EARLY -> claimed(player).orElseThrow();
            case NONE ->
                "Not shown to change late or early"
                        + player.lag()
                                .map(l -> ": median " + LagByPlayer.signed(l.medianMs()) + " ms of "
                                        + Words.count(player.changes(), "change") + ", where less than "
                                        + Words.milliseconds(l.smallestMs()) + " could not be seen")
                                .orElse("")
                        + ".";
            case TOO_FEW -> "Too few bow changes to say whether they come late or early: " + player.changes() + ".";
        };
    }
}
