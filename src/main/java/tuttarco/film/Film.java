package tuttarco.film;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleConsumer;
import tuttarco.faces.FaceBlur;
import tuttarco.faces.FacesInClip;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.video.ClipFacts;
import tuttarco.video.ClipPictures;
import tuttarco.video.ClipSound;
import tuttarco.video.ClipWriter;
import tuttarco.video.SoundFormat;

/**
 * A take as a video with its signs: every picture of the clip at its own time, and the clip's sound. Nothing else of the clip
 * is taken over. While one picture is drawn, those before it are packed.
 */
public final class Film {
    /** What the pictures may take, bits a pixel and frame (chosen: moving bows stay clear). */
    private static final double BITS_PER_PIXEL = 0.1;

    /** Fewer frames a second are no film, and more need no more bits; the clip's own where it says something likely. */
    private static final double FEWEST_PER_S = 10;

    private static final double MOST_PER_S = 60;

    /** Pictures drawn and not packed yet. */
    private static final int AHEAD = 3;

    private final Path video;
    private final FilmSigns signs;
    private final FacesToBlur faces;

    public Film(Path video, FilmSigns signs, FacesToBlur faces) {
        this.video = video;
        this.signs = signs;
        this.faces = faces;
    }

    /**
     * Writes the film, whole or not at all.
     *
     * @param progress told how much of it is drawn
     * @throws InputException if the clip can't be read
     * @throws OutputException if the file can't be written
     * @throws InterruptedException if the thread was interrupted; then nothing is written
     */
    public void write(Path file, Progress progress) throws InputException, OutputException, InterruptedException {
        Optional<FacesInClip> blurred = faces.found();
        try (ClipPictures pictures = ClipPictures.open(video)) {
            double lengthS = pictures.facts().durationS().orElse(Double.POSITIVE_INFINITY);
            Optional<ClipSound> sound = ClipSound.open(pictures.facts());
            try {
                write(file, pictures, blurred, sound, timeS -> progress.reached(Math.min(1, timeS / lengthS)));
            } finally {
                sound.ifPresent(ClipSound::close);
            }
        }
    }

    private void write(
            Path file,
            ClipPictures pictures,
            Optional<FacesInClip> blurred,
            Optional<ClipSound> sound,
            DoubleConsumer progress)
            throws OutputException, InterruptedException {
        FilmSize size = FilmSize.of(pictures.facts());
        double perS = framesPerS(pictures.facts());
        try (ClipWriter writer = ClipWriter.openIndexFirst(
                        file,
                        size.widthPx(),
                        size.heightPx(),
                        perS,
                        (int) (BITS_PER_PIXEL * size.widthPx() * size.heightPx() * perS),
                        sound.map(any -> new SoundFormat(ClipSound.SAMPLES_PER_S, ClipSound.CHANNELS)));
                Packing packing = new Packing(writer, sound)) {
            BufferedImage picture =
                    new BufferedImage(size.widthPx(), size.pictureHeightPx(), BufferedImage.TYPE_INT_RGB);
            do {
                double timeS = pictures.timeS();
                BufferedImage image = packing.free(size);
                pictures.draw(picture);
                blurred.ifPresent(found -> FaceBlur.over(picture, found.at(timeS), size.toPicture()));
                copy(picture, image);
                signs.draw(image, size, timeS);
                packing.pack(image, timeS);
                progress.accept(timeS);
            } while (pictures.next());
            packing.end(pictures.timeS() + 1 / perS);
            writer.finish();
        }
    }

    private static double framesPerS(ClipFacts clip) {
        return Math.max(FEWEST_PER_S, Math.min(MOST_PER_S, clip.framesPerS()));
    }

    /** Both are equally wide, so that the picture's pixels are the image's first. */
    private static void copy(BufferedImage picture, BufferedImage image) {
        int[] from = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        System.arraycopy(from, 0, ((DataBufferInt) image.getRaster().getDataBuffer()).getData(), 0, from.length);
    }

    /** Packs pictures, each with the sound up to it, on a thread of its own. */
    private static final class Packing implements AutoCloseable {
        private final ClipWriter writer;
        private final Optional<ClipSound> sound;
        private final ExecutorService thread = Executors.newSingleThreadExecutor();
        private final Deque<Future<BufferedImage>> running = new ArrayDeque<>();

        Packing(ClipWriter writer, Optional<ClipSound> sound) {
            this.writer = writer;
            this.sound = sound;
        }

        /** An image to draw on. */
        BufferedImage free(FilmSize size) throws OutputException, InterruptedException {
            if (Thread.interrupted()) {
                throw new InterruptedException("writing the video was stopped");
            }
            return running.size() < AHEAD
                    ? new BufferedImage(size.widthPx(), size.heightPx(), BufferedImage.TYPE_INT_RGB)
                    : done(running.removeFirst());
        }

        void pack(BufferedImage image, double timeS) {
            running.addLast(thread.submit((Callable<BufferedImage>) () -> {
                soundUntil(timeS);
                writer.frame(Math.max(0, timeS), image);
                return image;
            }));
        }

        /** Waits for the last picture, and adds the sound until it ends. */
        void end(double endS) throws OutputException, InterruptedException {
            while (!running.isEmpty()) {
                done(running.removeFirst());
            }
            soundUntil(endS);
        }

        private void soundUntil(double timeS) throws OutputException {
            if (sound.isPresent()) {
                long samples = Math.round(timeS * ClipSound.SAMPLES_PER_S)
                        - sound.get().at();
                if (samples > 0) {
                    float[] block = new float[(int) samples * ClipSound.CHANNELS];
                    sound.get().read(block, 0, (int) samples);
                    writer.sound(block);
                }
            }
        }

        private static <T> T done(Future<T> work) throws OutputException, InterruptedException {
            try {
                return work.get();
            } catch (ExecutionException e) {
                if (e.getCause() instanceof OutputException refused) {
                    throw refused;
                }
                throw new IllegalStateException("a picture could not be packed", e.getCause());
            }
        }

        /** Waits until the writer is left alone. */
        @Override
        public void close() {
            thread.shutdown();
            boolean interrupted = false;
            while (!thread.isTerminated()) {
                try {
                    thread.awaitTermination(1, TimeUnit.MINUTES);
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
