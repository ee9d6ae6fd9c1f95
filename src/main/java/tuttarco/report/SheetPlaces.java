package tuttarco.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tuttarco.beats.Beat;
import tuttarco.chart.PlayedBars;
import tuttarco.chart.Words;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Departure;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Spot;
import tuttarco.compare.Standing;
import tuttarco.compare.Verdict;
import tuttarco.seats.Player;

/** The bars a player should look at, told to the player. */
final class SheetPlaces {
    /** So that they fit on one page; the longest come first. */
    static final int MOST = 3;

    private static final Comparator<Spot> LONGEST = Comparator.<Spot>comparingInt(
                    s -> -departure(s).beatCount())
            .thenComparingDouble(s -> -s.confidence())
            .thenComparingInt(Spot::firstIndex);

    private final PlayerBeats beats;
    private final SpotWords words;

    SheetPlaces(PlayerBeats beats) {
        this.beats = beats;
        this.words = new SpotWords(beats.comparison());
    }

    /** All of the player's stretches, each by itself, the longest first. */
    List<Spot> spots() {
        return beats.comparison().divergences().stream()
                .filter(d -> d.against() == beats.reference())
                .flatMap(d -> d.departures().stream()
                        .filter(o -> o.player().equals(beats.player()))
                        .map(o -> new Spot(d.against(), d.standing(), List.of(o))))
                .sorted(LONGEST)
                .toList();
    }

    static Departure departure(Spot spot) {
        return spot.departures().get(0);
    }

    SheetModel.Section section() {
        List<Spot> spots = spots();
        List<Spot> shown = spots.stream()
                .limit(MOST)
                .sorted(Comparator.comparingInt(Spot::firstIndex))
                .toList();
        return new SheetModel.Section(
                "bars",
                "Bars to look at",
                spots.isEmpty() ? List.of(none()) : List.of(),
                IntStream.range(0, shown.size())
                        .mapToObj(i -> place(shown.get(i), i + 1))
                        .toList(),
                spots.isEmpty() ? Optional.empty() : Optional.of(closing(spots.size() - shown.size())));
    }

    private String none() {
        if (beats.leads()) {
            return "Nothing is marked here, and you lead: there is nothing your bow could be compared with.";
        }
        return beats.judged() < Comparison.LEAST_JUDGED_BEATS
                ? "Too little could be seen to say which."
                : "None. Nowhere was your bow seen to go another way than " + other() + " for a stretch.";
    }

    private static String closing(int more) {
        return (more == 0
                        ? ""
                        : "There " + (more == 1 ? "is 1 shorter place" : "are " + more + " shorter places")
                                + " like these; your leader can show you. ")
                + "Play these bars slowly, look at the signs, and ask your teacher which way is meant.";
    }

    private SheetModel.Place place(Spot spot, int number) {
        Beat first = beat(spot.firstIndex());
        PlayedBars picture = PlayedBars.beside(
                "bars-" + number,
                beats.comparison(),
                beats.reference(),
                beats.player(),
                spot.firstIndex(),
                spot.lastIndex());
        List<String> said = new ArrayList<>();
        said.add(did(spot));
        leader(spot).ifPresent(said::add);
        said.add("The reading is " + SpotWords.sure(spot.confidence()) + ".");
        if (!picture.whole()) {
            said.add("The picture shows the first bars of it.");
        }
        return new SheetModel.Place(
                Words.stretch(first, beat(spot.lastIndex())), Words.clock(first.timeS()), said, picture);
    }

    private Beat beat(int index) {
        return beats.map().beats().get(index);
    }

    private String did(Spot spot) {
        String length = Words.count(departure(spot).beatCount(), beats.unit());
        String how = spot.standing() == Standing.FREE
                ? "For " + length + " your bow seems to have gone now as " + other() + ", now otherwise"
                : "For " + length + " your bow seems to have gone the other way than " + other();
        return how + ". You were " + words.back(spot) + ".";
    }

    private String other() {
        return beats.reference() == Against.MARKING ? "marked" : "your leader's";
    }

    /** What the leader did where the player left the marking. */
    private Optional<String> leader(Spot spot) {
        return beats.comparison().players().stream()
                .filter(Player::leader)
                .filter(p -> beats.reference() == Against.MARKING && !p.equals(beats.player()))
                .findFirst()
                .map(p -> leader(beats.readings(p).subList(spot.firstIndex(), spot.lastIndex() + 1)));
    }

    private static String leader(List<BeatReading> readings) {
        long with = count(readings, Verdict.WITH);
        long against = count(readings, Verdict.AGAINST);
        long meant = readings.size() - count(readings, Verdict.REST);
        if (2 * (with + against) < meant || meant == 0) {
            return "What your leader did here could not be seen well enough.";
        }
        if (against == 0) {
            return "Your leader bowed as marked here.";
        }
        return with == 0
                ? "Your leader's bow went the same way as yours here, not as marked: perhaps this bowing was changed."
                : "Your leader's bow went as marked on " + with + " of " + (with + against) + " beats here.";
    }

    private static long count(List<BeatReading> readings, Verdict verdict) {
        return readings.stream().filter(r -> r.verdict() == verdict).count();
    }
}
