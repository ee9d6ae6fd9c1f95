package tuttarco.beats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * Beats laid along a line, each on one of the places it may lie on, and the runs in which they were played.
 *
 * <p>A run ends where the source says so, where the beats go back, and where from one beat to the next the playing must have
 * stopped ({@link Pace}). Among several places for a beat, as where a bar number occurs more than once, those are taken that
 * need the fewest such stops, and of those the ones that lie nearest to each other.
 *
 * @param places of the beats along the line
 */
record Laid(BeatMap map, double[] places) {
    /** What a stop costs that the source did not name. */
    private static final double STOP = 1;

    /** What going on costs where a stop is called for: more than a stop, so that it is done only for a beat left alone. */
    private static final double NO_STOP = 2;

    /** What a unit of way costs, either way: it decides between equal numbers of stops. */
    private static final double WAY = 1e-6;

    /** Most pairs of places to try, about a second's work; a part that numbers its bars has a few for each beat. */
    private static final long MOST_PAIRS = 200_000_000;

    /**
     * Lays the beats of a map.
     *
     * @param places for each beat where it may lie, at least one place, rising
     * @throws InputException if a beat stands alone between two stops
     */
    static Laid of(BeatMap map, List<double[]> places) throws InputException {
        return new Search(map, places).laid();
    }

    /** Dynamic programming over the beats: cheapest ways to each place, as the first beat of a run or a later one. */
    private static final class Search {
        private final BeatMap map;
        private final List<double[]> places;
        private final Pace pace;
        /** By beat: costs of its places where it begins a run, then of those where it goes on. */
        private final List<double[]> costs = new ArrayList<>();

        private final List<int[]> from = new ArrayList<>();

        Search(BeatMap map, List<double[]> places) throws InputException {
            this.map = map;
            this.places = places;
            requireFewPairs();
            double[] timesS = map.beats().stream().mapToDouble(Beat::timeS).toArray();
            double[] ways = new double[timesS.length - 1];
            for (int i = 0; i < ways.length; i++) {
                ways[i] = map.beginsRun(i + 1) ? Double.NaN : shortestWay(places.get(i), places.get(i + 1));
            }
            pace = new Pace(ways, timesS);
        }

        private void requireFewPairs() throws InputException {
            long pairs = 0;
            for (int i = 1; i < places.size(); i++) {
                pairs += (long) places.get(i - 1).length * places.get(i).length;
                if (pairs > MOST_PAIRS) {
                    throw new InputException("the part has too many bars of the same number to tell where "
                            + Plain.text(map.beats().get(i).spoken()) + " lies; number the bars of the part");
                }
            }
        }

        /** NaN where every way goes back. */
        private static double shortestWay(double[] start, double[] end) {
            double shortest = Double.NaN;
            for (double a : start) {
                int next = Arrays.binarySearch(end, a);
                next = next >= 0 ? next + 1 : -next - 1;
                if (next < end.length && !(shortest <= end[next] - a)) {
                    shortest = end[next] - a;
                }
            }
            return shortest;
        }

        Laid laid() throws InputException {
            double[] first = places.get(0);
            double[] begun = new double[2 * first.length];
            Arrays.fill(begun, Double.POSITIVE_INFINITY);
            for (int k = 0; k < first.length; k++) {
                begun[k] = WAY * Math.abs(first[k]);
            }
            costs.add(begun);
            from.add(new int[0]);
            for (int i = 1; i < places.size(); i++) {
                add(i);
            }
            int last = cheapest(costs.get(costs.size() - 1), places.get(places.size() - 1).length);
            if (last < 0) {
                throw alone(places.size() - 1);
            }
            return traced(last);
        }

        private void add(int index) throws InputException {
            double[] here = places.get(index);
            double[] before = places.get(index - 1);
            double[] costBefore = costs.get(index - 1);
            double[] cost = new double[2 * here.length];
            int[] way = new int[cost.length];
            Arrays.fill(cost, Double.POSITIVE_INFINITY);
            boolean named = map.beginsRun(index);
            Pace.Usual usual = pace.around(index - 1);
            for (int k = 0; k < here.length; k++) {
                for (int j = 0; j < before.length; j++) {
                    double far = WAY * Math.abs(here[k] - before[j]);
                    double stopping = costBefore[before.length + j] + far + (named ? 0 : STOP);
                    take(stopping, before.length + j, k, cost, way);
                    double onwards = here[k] - before[j];
                    if (!named && onwards > 0 && !pace.impossible(index - 1, onwards, usual)) {
                        double going = far + (pace.stopped(index - 1, onwards, usual) ? NO_STOP : 0);
                        take(costBefore[j] + going, j, here.length + k, cost, way);
                        take(costBefore[before.length + j] + going, before.length + j, here.length + k, cost, way);
                    }
                }
            }
            if (cheapest(cost, 0) < 0) {
                throw alone(index - 1);
            }
            costs.add(cost);
            from.add(way);
        }

        private static void take(double offered, int offeredFrom, int to, double[] cost, int[] way) {
            if (offered < cost[to]) {
                cost[to] = offered;
                way[to] = offeredFrom;
            }
        }

        /** The cheapest state from {@code first} on; -1 where none can be. */
        private static int cheapest(double[] cost, int first) {
            int best = -1;
            for (int s = first; s < cost.length; s++) {
                if (cost[s] < (best < 0 ? Double.POSITIVE_INFINITY : cost[best])) {
                    best = s;
                }
            }
            return best;
        }

        private Laid traced(int last) {
            double[] chosen = new double[places.size()];
            List<Run> runs = new ArrayList<>();
            int runEnd = chosen.length - 1;
            int state = last;
            for (int i = chosen.length - 1; i >= 0; i--) {
                int count = places.get(i).length;
                chosen[i] = places.get(i)[state % count];
                if (state < count) {
                    runs.add(0, new Run(i, runEnd));
                    runEnd = i - 1;
                }
                state = i > 0 ? from.get(i)[state] : state;
            }
            return new Laid(new BeatMap(map.beats(), runs), chosen);
        }

        private InputException alone(int index) {
            return new InputException(
                    "the beats name " + Plain.text(map.beats().get(index).spoken()) + " at "
                            + map.beats().get(index).timeS()
                            + " s alone between two stops; correct its bar, or list at least two beats of what was played there");
        }
    }
}
