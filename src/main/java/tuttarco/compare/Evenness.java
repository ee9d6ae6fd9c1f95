package tuttarco.compare;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How evenly a take sounded, as one microphone in one place heard it.
 *
 * @param integratedLufs loudness of the whole recording (ITU-R BS.1770); empty where it is silent
 * @param bars bar by bar in the order played; empty where no bars are known
 * @param changes how many bow changes could be measured, all players' together
 * @param dipLu median of how far the level dips at these; empty where there were none
 * @param amidStrokesLu the same measure amid long strokes: what a level wavers where the player doesn't change
 */
public record Evenness(
        OptionalDouble integratedLufs,
        List<BarEvenness> bars,
        int changes,
        OptionalDouble dipLu,
        OptionalDouble amidStrokesLu) {
    /** To be said wherever evenness is shown. */
    public static final String CAUTION =
            "One microphone in one place heard this: the nearest players are the loudest, the room rings, and a phone"
                    + " may level the sound by itself.";

    public Evenness {
        bars = List.copyOf(bars);
    }
}
