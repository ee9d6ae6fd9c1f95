package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.chart.Words;
import tuttarco.compare.BowSharing;
import tuttarco.compare.SharedBow;
import tuttarco.compare.SharedBow.Amounts;
import tuttarco.compare.SharedBow.EndsKnown;
import tuttarco.compare.SharedBow.Opposite;
import tuttarco.compare.SharedBow.TooFewLengths;
import tuttarco.compare.SharedBow.TooFewPlaces;
import tuttarco.seats.Player;
import tuttarco.strokes.BowPart;

/** Who takes how much bow, and where, beside the leader, in sentences. */
final class SharingWords {
    private final BowSharing sharing;
    private final BeatMap beats;

    SharingWords(BowSharing sharing, BeatMap beats) {
        this.sharing = sharing;
        this.beats = beats;
    }

    List<String> sentences() {
        if (sharing.players().isEmpty()) {
            return List.of("Nothing can be said: there is nobody whose bow could be compared with the leader's.");
        }
        List<String> sentences = new ArrayList<>(sharing.players().stream()
                .flatMap(p -> Stream.concat(half(p).stream(), elsewhere(p).stream()))
                .toList());
        if (sentences.isEmpty() && sharing.measured()) {
            sentences.add("Nobody is shown to take half the leader's bow or less, or to be at the other end of it.");
        }
        tooFew("how much bow they take", p -> p.amount() instanceof TooFewLengths)
                .ifPresent(sentences::add);
        tooFew("at which end of the bow they are", p -> p.ends() instanceof TooFewPlaces)
                .ifPresent(sentences::add);
        sentences.add(
                "The picture shortens a bow that points at the camera, and everything of a player farther off. So each "
                        + "stroke counts as a share of the player's own longest: who takes half as much in all strokes, the longest "
                        + "too, or has a shorter bow, is not found.");
        sentences.add(
                "This tells where the bow was, not how well anybody plays; the leader's way need not be the right one.");
        return sentences;
    }

    private Optional<String> tooFew(String what, Predicate<SharedBow> which) {
        List<Player> players =
                sharing.players().stream().filter(which).map(SharedBow::player).toList();
        return players.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Of " + Words.names(players) + " too few strokes could be measured beside the leader's to say "
                                + what + "; it takes " + Words.count(BowSharing.LEAST_STROKES, "stroke") + ".");
    }

    private static Optional<String> half(SharedBow player) {
        return player.amount() instanceof Amounts amounts && amounts.half()
                ? Optional.of(Words.plain(player.player().label()) + " takes about half the leader's bow or less: "
                        + measured(amounts) + ".")
                : Optional.empty();
    }

    private static String measured(Amounts amounts) {
        return Words.percent(amounts.ratio()) + ", the median of " + Words.count(amounts.strokes(), "stroke")
                + " both played, 95 % interval " + Words.percents(amounts.interval());
    }

    private Optional<String> elsewhere(SharedBow player) {
        return player.ends() instanceof EndsKnown ends && ends.apart()
                ? Optional.of(Words.plain(player.player().label()) + " is "
                        + Stream.of(BowPart.TIP, BowPart.FROG)
                                .flatMap(part -> at(part, ends).stream())
                                .collect(Collectors.joining(", and "))
                        + ", of " + Words.count(ends.strokes(), "stroke")
                        + " in which both could be placed and the leader was near an end (95 % interval "
                        + Words.percents(ends.interval()) + ").")
                : Optional.empty();
    }

    /** {@code at the tip while the leader is at the frog in 3, first in bar 2 (0:04.1)}. */
    private Optional<String> at(BowPart part, EndsKnown ends) {
        List<Opposite> opposite =
                ends.opposite().stream().filter(o -> o.part() == part).toList();
        BowPart leaders = part == BowPart.TIP ? BowPart.FROG : BowPart.TIP;
        return opposite.stream()
                .findFirst()
                .map(first -> "at the " + part.word() + " while the leader is at the " + leaders.word() + " in "
                        + opposite.size() + ", first " + where(first.startS()));
    }

    private String where(double timeS) {
        Optional<String> bar = beats.beats().stream()
                .filter(Beat::inBar)
                .takeWhile(b -> b.timeS() <= timeS)
                .reduce((before, after) -> after)
                .map(Beat::bar);
        String clock = Words.clock(timeS);
        return bar.map(b -> "in bar " + b + " (" + clock + ")").orElse("at " + clock);
    }

    /** About one player; nothing for whom the others are compared with, or where too little is known. */
    List<String> of(Player player) {
        return sharing.players().stream()
                .filter(p -> p.player().equals(player))
                .flatMap(p -> Stream.concat(half(p).or(() -> asMuch(p)).stream(), elsewhere(p).stream()))
                .toList();
    }

    private static Optional<String> asMuch(SharedBow player) {
        return player.amount() instanceof Amounts amounts
                ? Optional.of("Bow taken beside the leader's: " + measured(amounts) + ".")
                : Optional.empty();
    }
}
