package tuttarco.video;

import java.awt.image.BufferedImage;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * One upright picture of a clip.
 *
 * @param index number of the frame in the clip, from 0
 * @param timeS presentation time, seconds from the clip's start; rises from frame to frame
 * @param grey luma, one byte a pixel; valid until the next frame of the clip is asked for
 * @param shot what it is part of; the first unless {@link Shots} were looked for
 */
public record Frame(int index, double timeS, Mat grey, Shot shot) {
    public Frame(int index, double timeS, Mat grey) {
        this(index, timeS, grey, Shot.FIRST);
    }

    /** The same frame with a copy of its picture, which is the caller's to keep. */
    public Frame copiedTo(Mat own) {
        grey.copyTo(own);
        return new Frame(index, timeS, own, shot);
    }

    /** The picture in grey, to keep and to draw on. */
    public BufferedImage picture() {
        BufferedImage image = new BufferedImage(grey.cols(), grey.rows(), BufferedImage.TYPE_BYTE_GRAY);
        byte[] row = new byte[grey.cols()];
        for (int y = 0; y < grey.rows(); y++) {
            grey.ptr(y).get(row);
            image.getRaster().setDataElements(0, y, row.length, 1, row);
        }
        return image;
    }
}
