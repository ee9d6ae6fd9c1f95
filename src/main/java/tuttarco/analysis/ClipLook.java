package tuttarco.analysis;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.video.ClipFacts;
import tuttarco.video.ClipPictures;

/**
 * What a glance at a video tells before anything is read of it.
 *
 * @param picture from the middle of the clip where that can be read
 * @param notes what will make the reading hard, and what to do; one sentence each
 */
public record ClipLook(ClipFacts facts, BufferedImage picture, List<String> notes) {
    /**
     * Mean luma of the darkest clip in which strokes were read well, of 255: the scenes dim and dim-section have 28 to 30
     * (measured 2026-11-26).
     */
    private static final double DARKEST = 28;

    /** The smallest picture in which a section was read well, pixels: the scene section-small. */
    private static final int LEAST_WIDTH_PX = 480;

    private static final int LEAST_HEIGHT_PX = 270;

    /** Fewer show no strokes; as the reading says. */
    private static final double LEAST_FRAMES_PER_S = 10;

    /** Pictures are looked at in steps of so many pixels: enough for a mean. */
    private static final int STEP_PX = 4;

    public ClipLook {
        notes = List.copyOf(notes);
    }

    /**
     * Looks at a video.
     *
     * @throws InputException if it can't be opened or shows no picture
     */
    public static ClipLook of(Path video) throws InputException {
        try (ClipPictures pictures = ClipPictures.open(video)) {
            ClipFacts facts = pictures.facts();
            BufferedImage middle = pictures.at(facts.durationS().orElse(0.0) / 2);
            return new ClipLook(facts, middle, notes(facts, middle));
        }
    }

    private static List<String> notes(ClipFacts facts, BufferedImage picture) {
        String name = InputBytes.name(facts.file());
        List<String> notes = new ArrayList<>();
        if (!facts.hasSound()) {
            notes.add(
                    name
                            + " has no sound, so beats can't be heard in it; in Part and beats give them as a list or a steady tempo.");
        }
        if (luma(picture) < DARKEST) {
            notes.add(
                    name + " is darker than any video this program was tried on; film with more light, or look at every"
                            + " reading with doubt.");
        }
        if (facts.widthPx() < LEAST_WIDTH_PX || facts.heightPx() < LEAST_HEIGHT_PX) {
            notes.add(String.format(
                    Locale.ROOT,
                    "%s is only %d by %d pixels, so the players of a section are hardly seen in it; use the video as the"
                            + " camera made it, not one that was made smaller for sending.",
                    name,
                    facts.widthPx(),
                    facts.heightPx()));
        }
        if (facts.framesPerS() > 0 && facts.framesPerS() < LEAST_FRAMES_PER_S) {
            notes.add(String.format(
                    Locale.ROOT,
                    "%s has only %.0f pictures a second, too few to see strokes; film with 25 or more.",
                    name,
                    facts.framesPerS()));
        }
        return notes;
    }

    /** Mean luma, 0 to 255; ITU-R BT.601. */
    private static double luma(BufferedImage picture) {
        double sum = 0;
        int count = 0;
        for (int y = 0; y < picture.getHeight(); y += STEP_PX) {
            for (int x = 0; x < picture.getWidth(); x += STEP_PX) {
                int rgb = picture.getRGB(x, y);
                sum += 0.299 * (rgb >> 16 & 0xFF) + 0.587 * (rgb >> 8 & 0xFF) + 0.114 * (rgb & 0xFF);
                count++;
            }
        }
        return sum / count;
    }
}
