package tuttarco.faces;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.javacpp.Loader;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.RectVector;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_objdetect.CascadeClassifier;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.pose.PackedModel;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.video.ClipPictures;

/**
 * On real clips, a detector that has no part in the blurring, OpenCV's Haar cascade {@code frontalface_alt2}, looks for the faces
 * it found in the originals. Seats are those of the clips' own page.
 */
class OtherDetectorTest {
    /** Common area over the area of both from which on two squares are about the same (common practice, no source). */
    private static final double SAME = 0.3;

    private record Found(int inOriginals, int again) {}

    private static Found found(String clip, SeatBox seat) throws Exception {
        String folder = System.getProperty("tuttarco.clips", "");
        assumeTrue(!folder.isBlank() && Files.isDirectory(Path.of(folder)), "this needs -Dtuttarco.clips=DIR");
        PackedModel.orSkip();
        Path video = Path.of(folder).resolve(clip);
        Player player = new Player("Player", 1, Place.OUTSIDE, Instrument.VIOLIN, seat, Optional.empty(), true);
        FacesInClip faces = FacesInClip.of(video, List.of(player), Looks.steady(), timeS -> {});
        int originals = 0;
        int again = 0;
        try (ClipPictures pictures = ClipPictures.open(video);
                CascadeClassifier detector = detector()) {
            for (double timeS = 0.1; timeS < 8; timeS++) {
                BufferedImage picture = pictures.at(timeS);
                List<Rectangle> before = faces(detector, picture);
                FaceBlur.over(picture, faces.at(pictures.timeS()), new AffineTransform());
                originals += before.size();
                again += (int) faces(detector, picture).stream()
                        .filter(after -> before.stream().anyMatch(b -> overlap(b, after) > SAME))
                        .count();
            }
        }
        return new Found(originals, again);
    }

    private static CascadeClassifier detector() throws Exception {
        return new CascadeClassifier(Loader.cacheResource(
                        opencv_core.class,
                        "/org/bytedeco/opencv/" + Loader.getPlatform()
                                + "/share/opencv4/haarcascades/haarcascade_frontalface_alt2.xml")
                .getPath());
    }

    private static List<Rectangle> faces(CascadeClassifier detector, BufferedImage picture) {
        BufferedImage grey = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
        grey.createGraphics().drawImage(picture, 0, 0, null);
        byte[] luma = (byte[]) grey.getRaster().getDataElements(0, 0, grey.getWidth(), grey.getHeight(), null);
        List<Rectangle> faces = new ArrayList<>();
        try (Mat mat = new Mat(grey.getHeight(), grey.getWidth(), opencv_core.CV_8UC1);
                RectVector found = new RectVector()) {
            mat.data().put(luma);
            detector.detectMultiScale(mat, found, 1.1, 3, 0, new Size(20, 20), new Size());
            for (Rect face : found.get()) {
                faces.add(new Rectangle(face.x(), face.y(), face.width(), face.height()));
            }
        }
        return faces;
    }

    private static double overlap(Rectangle a, Rectangle b) {
        Rectangle both = a.intersection(b);
        double common = both.isEmpty() ? 0 : (double) both.width * both.height;
        return common / ((double) a.width * a.height + (double) b.width * b.height - common);
    }

    @Test
    void theViolinistsFaceIsFoundNoMore() throws Exception {
        Found found = found("violin-room.mp4", new SeatBox(30, 45, 390, 265));
        assertTrue(found.inOriginals() >= 5, found.toString());
        assertEquals(0, found.again(), found.toString());
    }

    /** What it sees twice is a sleeve; looked at one by one, see the method page. */
    @Test
    void ofTheCellistAndTheListenersHardlyAnythingIsFoundAgain() throws Exception {
        Found found = found("cello-stage.mp4", new SeatBox(100, 70, 780, 650));
        assertTrue(found.inOriginals() >= 12, found.toString());
        assertTrue(found.again() * 10 <= found.inOriginals(), found.toString());
    }
}
