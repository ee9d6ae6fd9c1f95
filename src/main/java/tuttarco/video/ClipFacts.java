package tuttarco.video;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * What is known of a clip, sizes in pixels of the upright picture (rotation applied).
 *
 * @param framesPerS average frame rate as the container tells it
 * @param durationS length as the container tells it; empty where it does not
 * @param made when it was filmed as the container tells it; empty where it does not
 */
public record ClipFacts(
        Path file,
        int widthPx,
        int heightPx,
        double framesPerS,
        Optional<Double> durationS,
        boolean hasSound,
        Optional<Instant> made) {}
