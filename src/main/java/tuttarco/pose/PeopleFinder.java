package tuttarco.pose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.video.Frame;

/**
 * Finds everybody in a picture. The model itself searches: it looks at overlapping crops, from the whole picture down to
 * small ones; from a crop that seems to show somebody it leads to a better one, a few times over, and where it settles is
 * somebody. Several crops settle on the same person, who then counts once.
 *
 * <p>The model's word for a person is not proof: it also sees people in a chair or a jacket. Look at several pictures.
 */
public final class PeopleFinder {
    /** Side of the largest crops over the picture's shorter side: a close-up, whose hips are at the lower edge. */
    private static final double LARGEST = 1.5;

    /** Side of a crop over that of the next smaller one, and distance of two crops over their side; the model finds who is
     * half as far off (measured on real and rendered players: within a factor of 1.3, and within 0.3 of the side). */
    private static final double SCALES = 1.5;

    private static final double STRIDE = 0.5;

    /** Smaller crops hold nobody whose arms could be followed, pixels: shoulders of less than 20 px. */
    private static final double SMALLEST_PX = 100;

    /** A crop with less chance of a person is left at once. */
    private static final double PROMISING = 0.3;

    /** How often the model looks: at the crop, and then at the better ones it leads to. */
    private static final int STEPS = 3;

    /** What the model settles on counts if it is as likely as this a person. */
    private static final double LEAST_PERSON = 0.5;

    /** A crop this near to a person, in sides, and this near in size would only settle on the same. */
    private static final double KNOWN_NEAR = 0.25;

    private static final double KNOWN_SIZE = 1.6;

    /** Who plays in one section differs in size by no more than this, near to far. */
    private static final double NEAR_TO_FAR = 2;

    /** Side of the smallest crops in which listeners are looked for, over the picture's shorter side (chosen; smaller take long). */
    private static final double LISTENER = 0.4;

    private final PoseNets nets;
    private final boolean listenersToo;

    private PeopleFinder(PoseNets nets, boolean listenersToo) {
        this.nets = nets;
        this.listenersToo = listenersToo;
    }

    /** Finds those who may play in one section, near or far. */
    public static PeopleFinder ofSection(PoseNets nets) {
        return new PeopleFinder(nets, false);
    }

    /** Finds listeners and passers-by, too, who may be much smaller than a player near the camera; but nobody far off. */
    public static PeopleFinder ofAnybody(PoseNets nets) {
        return new PeopleFinder(nets, true);
    }

    /**
     * Everybody in the picture, each once.
     *
     * @param known people already found in the picture
     * @param shifted whether the crops lie half way between where they lie otherwise
     * @throws InterruptedException if the thread was interrupted
     */
    public List<Pose> in(Frame frame, List<Pose> known, boolean shifted) throws InterruptedException {
        Mat grey = frame.grey();
        List<Pose> people = new ArrayList<>(known);
        double sidePx = LARGEST * Math.min(grey.cols(), grey.rows());
        while (sidePx >= Math.max(SMALLEST_PX, smallestPx(grey, people))) {
            if (Thread.interrupted()) {
                throw new InterruptedException("the search for people was stopped");
            }
            List<Crop> crops = grid(grey, sidePx, shifted).stream()
                    .filter(crop -> people.stream().noneMatch(p -> settlesOn(crop, p)))
                    .toList();
            search(grey, crops, people);
            sidePx /= SCALES;
        }
        return List.copyOf(people);
    }

    /** Each of the people as another picture shows them; empty for those who are not where they were. */
    public List<Optional<Pose>> again(Frame frame, List<Pose> people) {
        return estimate(frame.grey(), people.stream().map(Crop::around).toList()).stream()
                .map(pose -> Optional.of(pose).filter(p -> isPerson(p, frame.grey())))
                .toList();
    }

    private double smallestPx(Mat grey, List<Pose> people) {
        if (listenersToo) {
            return LISTENER * Math.min(grey.cols(), grey.rows());
        }
        double[] sidesPx = people.stream()
                .mapToDouble(p -> Crop.around(p).sidePx())
                .sorted()
                .toArray();
        return sidesPx.length == 0 ? 0 : sidesPx[sidesPx.length / 2] / NEAR_TO_FAR;
    }

    private static List<Crop> grid(Mat grey, double sidePx, boolean shifted) {
        int columns = (int) Math.max(1, Math.round(grey.cols() / (STRIDE * sidePx)));
        int rows = (int) Math.max(1, Math.round(grey.rows() / (STRIDE * sidePx)));
        double offset = shifted ? 0 : 0.5;
        List<Crop> crops = new ArrayList<>();
        for (int row = 0; row + offset <= rows; row++) {
            for (int column = 0; column + offset <= columns; column++) {
                crops.add(new Crop(
                        (column + offset) * grey.cols() / columns, (row + offset) * grey.rows() / rows, sidePx));
            }
        }
        return crops;
    }

    private static boolean settlesOn(Crop crop, Pose person) {
        Crop own = Crop.around(person);
        double size = crop.sidePx() / own.sidePx();
        return Math.hypot(crop.centreXPx() - own.centreXPx(), crop.centreYPx() - own.centreYPx())
                        < KNOWN_NEAR * crop.sidePx()
                && size < KNOWN_SIZE
                && size > 1 / KNOWN_SIZE;
    }

    /** Adds who the model settles on from the crops. */
    private void search(Mat grey, List<Crop> crops, List<Pose> people) {
        List<Pose> found = List.of();
        List<Crop> next = crops;
        for (int step = 0; step < STEPS; step++) {
            found = withoutDoubles(estimate(grey, next), people);
            next = found.stream().map(Crop::around).toList();
        }
        people.addAll(found.stream().filter(p -> isPerson(p, grey)).toList());
    }

    private List<Pose> estimate(Mat grey, List<Crop> crops) {
        return crops.parallelStream()
                .map(crop -> nets.with(net -> net.estimate(grey, crop)))
                .toList();
    }

    private static boolean isPerson(Pose pose, Mat grey) {
        return pose.person() >= LEAST_PERSON
                && pose.upright()
                && pose.shouldersXPx() >= 0
                && pose.shouldersXPx() < grey.cols()
                && pose.shouldersYPx() >= 0
                && pose.shouldersYPx() < grey.rows();
    }

    /** The promising ones, the likeliest first, each once and none who is known already. */
    private static List<Pose> withoutDoubles(List<Pose> found, List<Pose> known) {
        List<Pose> once = new ArrayList<>();
        found.stream()
                .filter(p -> p.person() >= PROMISING)
                .sorted(Comparator.comparingDouble(Pose::person).reversed())
                .filter(p ->
                        known.stream().noneMatch(p::sameAs) && once.stream().noneMatch(p::sameAs))
                .forEach(once::add);
        return once;
    }
}
