package tuttarco.window;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import tuttarco.beats.Beat;
import tuttarco.files.InputException;
import tuttarco.playback.Click;
import tuttarco.playback.ClipPlayer;
import tuttarco.playback.Sink;
import tuttarco.review.Playing;

/** A clip's sound by the player that shows its pictures elsewhere. */
final class ClipSound implements Playing {
    /** Pictures nobody looks at are made small; pixels. */
    private static final int SMALL_PX = 16;

    private final ClipPlayer player;

    private ClipSound(ClipPlayer player) {
        this.player = player;
    }

    static Playing open(Path video, Runnable stopped) throws InputException {
        ClipPlayer player = ClipPlayer.open(video, new Sink() {
            @Override
            public void shown(BufferedImage picture, double timeS) {}

            @Override
            public void stopped() {
                stopped.run();
            }
        });
        player.fit(SMALL_PX, SMALL_PX);
        return new ClipSound(player);
    }

    @Override
    public void play() {
        player.play();
    }

    @Override
    public void pause() {
        player.pause();
    }

    @Override
    public boolean playing() {
        return player.playing();
    }

    @Override
    public void seek(double timeS) {
        player.seek(timeS);
    }

    @Override
    public double soundS() {
        return player.soundS();
    }

    @Override
    public void speed(double factor) {
        player.speed(factor);
    }

    @Override
    public void ticks(List<Beat> beats) {
        player.clicks(beats.stream()
                .map(beat -> new Click(beat.timeS(), beat.beat() == 1))
                .toList());
    }

    @Override
    public void close() {
        player.close();
    }
}
