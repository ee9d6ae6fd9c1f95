package tuttarco.align;

import java.util.Arrays;

/** Straight lines from point to point, and on beyond the first and the last. */
final class Lines {
    private Lines() {}

    /** The value at a place; places rise strictly and there are at least two. */
    static double at(double[] places, double[] values, double place) {
        int found = Arrays.binarySearch(places, place);
        if (found >= 0) {
            return values[found];
        }
        int after = Math.max(1, Math.min(places.length - 1, -found - 1));
        double share = (place - places[after - 1]) / (places[after] - places[after - 1]);
        return values[after - 1] + share * (values[after] - values[after - 1]);
    }
}
