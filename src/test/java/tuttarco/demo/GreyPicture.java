package tuttarco.demo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;

/** Painted frames as trackers take them. */
final class GreyPicture {
    private GreyPicture() {}

    static Mat of(BufferedImage image) {
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        try (Mat colours = new Mat(image.getHeight(), image.getWidth(), opencv_core.CV_8UC3)) {
            colours.data().put(bytes, 0, bytes.length);
            Mat grey = new Mat();
            opencv_imgproc.cvtColor(colours, grey, opencv_imgproc.COLOR_BGR2GRAY);
            return grey;
        }
    }
}
