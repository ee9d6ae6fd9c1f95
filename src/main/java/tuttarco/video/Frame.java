package tuttarco.video;

import org.bytedeco.opencv.opencv_core.Mat;

/**
 * One upright picture of a clip.
 *
 * @param index number of the frame in the clip, from 0
 * @param timeS presentation time, seconds from the clip's start; rises from frame to frame
 * @param grey luma, one byte a pixel; valid until the next frame of the clip is asked for
 */
public record Frame(int index, double timeS, Mat grey) {}
