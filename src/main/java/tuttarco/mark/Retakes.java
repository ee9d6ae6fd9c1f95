package tuttarco.mark;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tuttarco.compare.PlayedStroke;
import tuttarco.score.PartSpan.MarkedStroke;

/**
 * Which playing of a stroke counts where a place of the part was taken again: the last that is certain, or else the last of
 * all, for a rehearsal goes back to put right what was played before (common practice, no source).
 *
 * @param counted one playing a stroke, in the order of their first playings
 * @param replaced certain playings that went the other way and don't count, in the order played
 */
record Retakes(List<PlayedStroke> counted, List<PlayedStroke> replaced) {
    /** In the order played, a stroke as often as it was played. */
    static Retakes of(List<PlayedStroke> played) {
        Map<MarkedStroke, PlayedStroke> last = new HashMap<>();
        for (PlayedStroke stroke : played) {
            last.merge(
                    stroke.marked(), stroke, (before, again) -> before.certain() && !again.certain() ? before : again);
        }
        List<PlayedStroke> counted = played.stream()
                .map(PlayedStroke::marked)
                .distinct()
                .map(last::get)
                .toList();
        List<PlayedStroke> replaced = played.stream()
                .filter(PlayedStroke::certain)
                .filter(p -> !last.get(p.marked()).direction().equals(p.direction()))
                .toList();
        return new Retakes(counted, replaced);
    }
}
