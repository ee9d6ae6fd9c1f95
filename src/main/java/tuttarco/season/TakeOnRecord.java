package tuttarco.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.compare.BarEvenness;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Evenness;
import tuttarco.compare.Lag;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.Timing;
import tuttarco.compare.Togetherness;
import tuttarco.compare.Unity;
import tuttarco.seats.Player;
import tuttarco.take.Bowing;
import tuttarco.take.Take;

/**
 * What is kept of an analysed take to set it beside others: what each player did on each beat and how that stands, no
 * pictures and no sound.
 *
 * @param videoSha256 the recording it was read from, lower-case hex
 * @param day when it was played; empty where nobody knows
 * @param marked whether the section was compared with a marking
 * @param unity how far the bows went as one, 1 all, 0 as by chance; empty where it can't be told
 * @param players in section order
 * @param evenness how evenly the bars sounded, in the order played; empty where there was no sound
 */
public record TakeOnRecord(
        String videoSha256,
        String title,
        Optional<LocalDate> day,
        Bowing bowing,
        boolean marked,
        OptionalDouble unity,
        List<BeatOnRecord> beats,
        List<PlayerOnRecord> players,
        List<BarEvenness> evenness) {
    public TakeOnRecord {
        beats = List.copyOf(beats);
        players = List.copyOf(players);
        evenness = List.copyOf(evenness);
        int count = beats.size();
        if (players.stream().anyMatch(p -> p.played().size() != count)) {
            throw new IllegalArgumentException("each player has all " + count + " beats");
        }
    }

    /** What is kept of what came out of an analysis. */
    public static TakeOnRecord of(
            Take take,
            String videoSha256,
            Optional<LocalDate> day,
            Comparison comparison,
            Unity unity,
            Togetherness together,
            Optional<Evenness> evenness) {
        return new TakeOnRecord(
                videoSha256,
                take.title(),
                day,
                take.bowing(),
                comparison.marked(),
                unity instanceof Unity.Told told
                        ? OptionalDouble.of(told.section().index())
                        : OptionalDouble.empty(),
                beats(comparison),
                players(comparison, together.timing()),
                evenness.map(Evenness::bars).orElse(List.of()));
    }

    /** The same take with its players called otherwise. */
    TakeOnRecord called(UnaryOperator<String> label) {
        return new TakeOnRecord(
                videoSha256,
                title,
                day,
                bowing,
                marked,
                unity,
                beats,
                players.stream().map(p -> p.called(label.apply(p.label()))).toList(),
                evenness);
    }

    private static List<BeatOnRecord> beats(Comparison comparison) {
        BeatMap beats = comparison.beats();
        return IntStream.range(0, beats.beats().size())
                .mapToObj(i -> {
                    Beat beat = beats.beats().get(i);
                    return new BeatOnRecord(
                            beat.bar(),
                            beat.beat(),
                            beats.beginsBar(i),
                            beat.timeS(),
                            comparison.beatReadings().stream()
                                    .flatMap(p -> p.get(i).marked().stream())
                                    .findFirst());
                })
                .toList();
    }

    private static List<PlayerOnRecord> players(Comparison comparison, Timing timing) {
        TreeMap<Double, Integer> beatAt = new TreeMap<>();
        List<Beat> beats = comparison.beats().beats();
        IntStream.range(0, beats.size()).forEach(i -> beatAt.put(beats.get(i).timeS(), i));
        Map<Player, Lag> lags = new HashMap<>();
        timing.lags().forEach(l -> lags.put(l.player(), l));
        Map<Player, PlayerTiming> timings = new HashMap<>();
        timing.players().forEach(p -> timings.put(p.player(), p));
        List<PlayerOnRecord> players = new ArrayList<>();
        for (int i = 0; i < comparison.players().size(); i++) {
            Player player = comparison.players().get(i);
            List<BeatReading> readings = comparison.beatReadings().get(i);
            players.add(new PlayerOnRecord(
                    player.label(),
                    player.desk(),
                    player.place(),
                    player.leader(),
                    readings.stream().map(BeatReading::played).toList(),
                    readings.stream().map(BeatReading::verdict).toList(),
                    readings.stream().map(BeatReading::leaderVerdict).toList(),
                    lags(Optional.ofNullable(lags.get(player)), beatAt),
                    smallestMs(Optional.ofNullable(timings.get(player)))));
        }
        return players;
    }

    private static List<PlayerOnRecord.LagOnRecord> lags(Optional<Lag> lag, TreeMap<Double, Integer> beatAt) {
        return lag.map(Lag::pairs).orElse(List.of()).stream()
                .map(p -> new PlayerOnRecord.LagOnRecord(nearest(beatAt, p.leaderS()), p.lagMs()))
                .toList();
    }

    private static int nearest(TreeMap<Double, Integer> beatAt, double timeS) {
        return Stream.of(Optional.ofNullable(beatAt.floorEntry(timeS)), Optional.ofNullable(beatAt.ceilingEntry(timeS)))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(e -> Math.abs(e.getKey() - timeS)))
                .orElseThrow()
                .getValue();
    }

    private static OptionalDouble smallestMs(Optional<PlayerTiming> timing) {
        return timing.flatMap(PlayerTiming::lag).stream()
                .mapToDouble(PlayerTiming.Measured::smallestMs)
                .findFirst();
    }
}
