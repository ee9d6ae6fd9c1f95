package tuttarco.compare;

import java.util.OptionalDouble;

/**
 * How evenly one bar sounded.
 *
 * @param bar the bar number as printed
 * @param firstIndex index of the bar's first beat in the beat map
 * @param momentaryLufs mean of momentary loudness over the bar; empty where it was too faint
 * @param spreadLu standard deviation of momentary loudness within the bar; empty where too little of it was loud enough
 * @param dipLu how far the level dips at a bow change, mean over the changes of all players that could be measured; empty
 *     where there were none
 * @param changes how many these were
 */
public record BarEvenness(
        String bar,
        int firstIndex,
        OptionalDouble momentaryLufs,
        OptionalDouble spreadLu,
        OptionalDouble dipLu,
        int changes) {}
