package tuttarco.playback;

import java.util.Arrays;
import java.util.Optional;
import tuttarco.video.ClipSound;
import tuttarco.video.SlowedSound;

/** What is heard along a course at a speed: the clip's sound, or silence where it has none, and ticks over it. */
final class Heard implements AutoCloseable {
    private final Optional<ClipSound> sound;
    private final Course course;
    private final double speed;
    private final Optional<SlowedSound> slowed;
    private final float[] unslowed;
    /** Samples of the course read, and samples given out. */
    private long readAt;

    private long at;

    /**
     * @param blockSamples how many samples of both channels are asked for at once
     */
    Heard(Optional<ClipSound> sound, Course course, double speed, int blockSamples) {
        this.sound = sound;
        this.course = course;
        this.speed = speed;
        this.slowed = sound.isPresent() && speed < 1 ? Optional.of(new SlowedSound(speed)) : Optional.empty();
        this.unslowed = new float[blockSamples * ClipSound.CHANNELS];
    }

    /** Fills a block with what is heard next. */
    void fill(float[] block, Ticks ticks) {
        int samples = block.length / ClipSound.CHANNELS;
        if (slowed.isPresent()) {
            int filled = 0;
            while (filled < samples) {
                filled += slowed.get().take(block, filled, samples - filled);
                if (filled < samples) {
                    read(unslowed);
                    slowed.get().put(unslowed);
                }
            }
        } else {
            read(block);
        }
        mix(block, ticks);
        at += samples;
    }

    /** Reads on along the course at full speed. */
    private void read(float[] block) {
        int samples = block.length / ClipSound.CHANNELS;
        for (Course.Stretch stretch : course.between(seconds(readAt), seconds(readAt + samples))) {
            int from = (int) (samples(stretch.fromS()) - readAt);
            int count = (int) (samples(stretch.toS()) - readAt) - from;
            long inClip = samples(stretch.clipS());
            sound.ifPresent(clip -> {
                // one sample off is rounding
                if (Math.abs(clip.at() - inClip) > 1) {
                    clip.seek(inClip);
                }
                clip.read(block, from, count);
            });
        }
        if (sound.isEmpty()) {
            Arrays.fill(block, 0);
        }
        readAt += samples;
    }

    /** A tick that began in the block before sounds on in this one. */
    private void mix(float[] block, Ticks ticks) {
        double fromS = seconds(Math.max(0, at - Ticks.LENGTH)) * speed;
        double toS = seconds(at + block.length / ClipSound.CHANNELS) * speed;
        for (Course.Stretch stretch : course.between(fromS, toS)) {
            double clipToS = stretch.clipS() + stretch.toS() - stretch.fromS();
            for (Click click : ticks.between(stretch.clipS(), clipToS)) {
                double runS = stretch.fromS() + click.timeS() - stretch.clipS();
                Ticks.mix(click, block, samples(runS / speed) - at);
            }
        }
    }

    private static double seconds(long samples) {
        return (double) samples / ClipSound.SAMPLES_PER_S;
    }

    private static long samples(double seconds) {
        return Math.round(seconds * ClipSound.SAMPLES_PER_S);
    }

    @Override
    public void close() {
        slowed.ifPresent(SlowedSound::close);
    }
}
