package tuttarco.season;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import tuttarco.compare.Bows;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Comparing;
import tuttarco.compare.Comparison;
import tuttarco.compare.MeasuredErrors;
import tuttarco.compare.Passage;
import tuttarco.compare.SimulatedPlayer;
import tuttarco.compare.Togetherness;
import tuttarco.compare.Unity;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Reading;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;

/**
 * Takes of which it is known what was played, read with measured errors: a section of which the first leads, in bars of four
 * strokes of half a second.
 *
 * @param errors of which each player has one's in each take, at random
 */
record SimulatedTakes(int players, int bars, List<MeasuredErrors> errors) {
    private static final double STROKE_S = 0.5;
    private static final int BEATS_IN_BAR = 4;
    /** About what is known of a change at 30 frames a second. */
    private static final Edge CHANGE = new Edge.Change(0.02);

    /** What a player does, by number from 0. */
    interface Doing {
        SimulatedPlayer of(int number, SimulatedPlayer keepingToTheMarking);
    }

    /** Turned in some bars, by index. */
    static UnaryOperator<SimulatedPlayer> turnedIn(List<Integer> bars) {
        return player -> {
            SimulatedPlayer turned = player;
            for (int bar : bars) {
                turned = turned.turned(BEATS_IN_BAR * bar, BEATS_IN_BAR * bar + BEATS_IN_BAR - 1);
            }
            return turned;
        };
    }

    TakeOnRecord read(Doing doing, Random random) {
        Passage passage = Passage.steady(STROKE_S, STROKE_S, BEATS_IN_BAR * bars);
        List<Player> section = IntStream.range(0, players)
                .mapToObj(p -> Bows.player("p" + p, 1 + p / 2, p % 2 == 0 ? Place.OUTSIDE : Place.INSIDE, p == 0))
                .toList();
        List<Reading> readings = new ArrayList<>();
        for (int p = 0; p < players; p++) {
            readings.add(doing.of(p, SimulatedPlayer.with(section.get(p))).read(passage, errors, random));
        }
        Comparison comparison =
                Comparing.compare(readings, passage.beats(), passage.marking(), CompareSettings.DEFAULT);
        Take take = new Take(
                Path.of("simulated.take.json"),
                "Simulated",
                Path.of("simulated.mp4"),
                section,
                Optional.of(Path.of("simulated.musicxml")),
                new BeatsGiven.Missing(),
                Bowing.UNIFIED);
        return TakeOnRecord.of(
                take,
                "0".repeat(64),
                Optional.empty(),
                comparison,
                new Unity.NotTold(Unity.Reason.values()[0]),
                Togetherness.of(
                        comparison, readings.stream().map(SimulatedTakes::bows).toList(), CompareSettings.DEFAULT),
                Optional.empty());
    }

    private static tuttarco.strokes.Bows bows(Reading reading) {
        return new tuttarco.strokes.Bows(
                reading.player(),
                reading.strokes().stream()
                        .map(s -> new Bow(s, CHANGE, CHANGE, new BowUse.Unknown(BowUse.Reason.UNCLEAR)))
                        .toList());
    }
}
