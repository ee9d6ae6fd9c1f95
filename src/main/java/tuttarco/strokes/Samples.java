package tuttarco.strokes;

import java.util.List;
import tuttarco.tracks.ArmSample;

/** Finds samples by their time. */
final class Samples {
    private Samples() {}

    /** Index of the first sample later than a time; as many as there are if none is. */
    static int after(List<? extends ArmSample> samples, double timeS) {
        int low = 0;
        int high = samples.size();
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (samples.get(mid).timeS() <= timeS) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return low;
    }
}
