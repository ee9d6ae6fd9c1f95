package tuttarco.film;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import tuttarco.faces.FaceBlur;
import tuttarco.faces.FacesInClip;
import tuttarco.files.InputException;
import tuttarco.video.ClipPictures;

/**
 * Single pictures of a clip to give out: as JPEG, without a word of where, when or with what they were filmed, and with faces
 * blurred unless the user says otherwise.
 */
public final class Stills {
    /** A time this much after the last picture's has none, seconds (chosen). */
    private static final double PAST_END_S = 0.5;

    /** JPEG's quality, 0 to 1 (chosen: signs and bows stay clear). */
    private static final float QUALITY = 0.75f;

    private final Path video;
    private final FacesToBlur faces;
    private final Progress progress;

    /** @param progress told how many of them are taken */
    public Stills(Path video, FacesToBlur faces, Progress progress) {
        this.video = video;
        this.faces = faces;
        this.progress = progress;
    }

    /**
     * The pictures that are seen at the times, as JPEG, each as wide as asked or as the clip if that is narrower; empty where
     * there is none. Only one of the pictures is held at a time.
     *
     * @param timesS seconds from the clip's start, in any order
     * @throws InputException if the clip can't be read
     * @throws InterruptedException if the thread was interrupted
     */
    public List<Optional<byte[]>> jpegs(List<Double> timesS, int widthPx) throws InputException, InterruptedException {
        List<Optional<byte[]>> jpegs = new ArrayList<>(Collections.nCopies(timesS.size(), Optional.empty()));
        List<Integer> order = IntStream.range(0, timesS.size())
                .boxed()
                .sorted(Comparator.comparingDouble(timesS::get))
                .toList();
        Optional<FacesInClip> blurred = faces.found();
        int taken = 0;
        try (ClipPictures pictures = ClipPictures.open(video)) {
            for (int i : order) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("taking stills was stopped");
                }
                jpegs.set(i, jpeg(pictures, timesS.get(i), widthPx, blurred));
                taken++;
                progress.reached((double) taken / order.size());
            }
        }
        return List.copyOf(jpegs);
    }

    private Optional<byte[]> jpeg(ClipPictures pictures, double timeS, int widthPx, Optional<FacesInClip> blurred) {
        if (timeS < 0) {
            return Optional.empty();
        }
        pictures.seek(timeS);
        if (timeS > pictures.timeS() + PAST_END_S) {
            return Optional.empty();
        }
        double scale = Math.min(1, (double) widthPx / pictures.facts().widthPx());
        BufferedImage picture = new BufferedImage(
                (int) Math.max(1, Math.round(scale * pictures.facts().widthPx())),
                (int) Math.max(1, Math.round(scale * pictures.facts().heightPx())),
                BufferedImage.TYPE_INT_RGB);
        pictures.draw(picture);
        blurred.ifPresent(found ->
                FaceBlur.over(picture, found.at(pictures.timeS()), AffineTransform.getScaleInstance(scale, scale)));
        return Optional.of(jpeg(picture));
    }

    private static byte[] jpeg(BufferedImage picture) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException("a still could not be packed", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
