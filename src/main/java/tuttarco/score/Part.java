package tuttarco.score;

import java.util.List;

/** The part on the stand: its bars in the order played and its strokes and rests with their directions. */
public record Part(String name, List<Bar> bars, List<PartSpan> spans) {
    public Part {
        bars = List.copyOf(bars);
        spans = List.copyOf(spans);
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("a part has at least one bar");
        }
    }
}
