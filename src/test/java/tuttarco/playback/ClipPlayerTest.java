package tuttarco.playback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.files.InputException;
import tuttarco.video.ClipSound;
import tuttarco.video.NumberedClip;
import tuttarco.video.TestClips;

class ClipPlayerTest {
    /** The figure: sound and picture are no further apart; seconds. */
    private static final double APART_S = 0.04;

    private static final int PICTURES = 120;
    private static final double PER_S = 30;

    /** A tone for 50 ms at each whole and half second. */
    private static double beeps(double timeS) {
        return timeS % 0.5 < 0.05 ? 0.5 * Math.sin(2 * Math.PI * 880 * timeS) : 0;
    }

    @TempDir
    Path folder;

    private final SimulatedOut out = new SimulatedOut();
    private final SeenPictures seen = new SeenPictures(out);

    private Path clip(List<Double> timesS) throws Exception {
        return NumberedClip.write(
                folder.resolve("clip.mp4"), timesS, Optional.of(ClipPlayerTest::beeps), PICTURES / PER_S);
    }

    private Path clip() throws Exception {
        return clip(NumberedClip.evenly(PICTURES, PER_S));
    }

    private static List<Double> uneven() {
        Random random = new Random(7);
        return IntStream.range(0, PICTURES)
                .mapToObj(i -> i == 0 ? 0.0 : (i + 0.9 * (random.nextDouble() - 0.5)) / PER_S)
                .toList();
    }

    /** When it begins to sound after silence, seconds played. */
    private static List<Double> onsetsS(float[] heard) {
        List<Double> onsets = new ArrayList<>();
        int silent = ClipSound.SAMPLES_PER_S / 50;
        int since = silent;
        for (int i = 0; i < heard.length; i++) {
            if (Math.abs(heard[i]) > 0.15) {
                if (since >= silent) {
                    onsets.add((double) i / ClipSound.SAMPLES_PER_S);
                }
                since = 0;
            } else {
                since++;
            }
        }
        return onsets;
    }

    private void awaitPlayedOut(ClipPlayer player) throws InterruptedException {
        seen.await(() -> seen.stops() > 0);
        assertFalse(player.playing());
    }

    @Test
    void itOpensAtItsFirstPicture() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            seen.awaitNumber(0);
            assertFalse(player.playing());
            assertEquals(NumberedClip.WIDTH_PX, player.facts().widthPx());
            assertEquals(Optional.empty(), player.note());
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyPictureIsShownWhenTheSoundHasComeToIt(boolean steady) throws Exception {
        try (ClipPlayer player =
                ClipPlayer.open(clip(steady ? NumberedClip.evenly(PICTURES, PER_S) : uneven()), seen, out)) {
            seen.awaitNumber(0);
            seen.forget();
            player.play();
            awaitPlayedOut(player);
            List<SeenPictures.Seen> all = seen.all();
            assertEquals(PICTURES, all.size());
            for (int i = 0; i < PICTURES; i++) {
                assertEquals(i, all.get(i).number());
                assertEquals(all.get(i).timeS(), all.get(i).playedS(), APART_S, "picture " + i);
            }
            assertEquals(0, player.counts().dropped());
            assertEquals(PICTURES - 1, player.counts().shown(), "the first was seen before");
            assertTrue(player.counts().worstOffsetMs() < APART_S * 1000);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 0.75, 1})
    void whatIsHeardBelongsToWhatIsSeenAtAnySpeed(double speed) throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            player.speed(speed);
            player.play();
            awaitPlayedOut(player);
            List<Double> onsets = onsetsS(out.heard());
            assertEquals(8, onsets.size(), onsets.toString());
            for (int i = 1; i < 8; i++) {
                // slower than half the speed the filter runs twice, and lengthens notes by more than that
                double apartS = speed < 0.5 ? 0.1 : APART_S;
                assertEquals(i * 0.5 / speed, onsets.get(i), apartS, "beep " + i + " of " + onsets);
            }
            List<SeenPictures.Seen> pictures = seen.all();
            assertEquals(PICTURES - 1, pictures.get(pictures.size() - 1).number());
            for (SeenPictures.Seen picture : pictures) {
                assertEquals(picture.timeS() / speed, picture.playedS(), APART_S, picture.toString());
            }
        }
    }

    @Test
    void seekingShowsTheVeryPictureAndPlayingGoesOnFromThere() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            Random random = new Random(3);
            for (int i = 0; i < 10; i++) {
                int wanted = random.nextInt(PICTURES);
                player.seek((wanted + 0.5) / PER_S);
                seen.awaitNumber(wanted);
                assertEquals(wanted / PER_S, player.timeS(), 1e-3);
            }
            player.seek(80.5 / PER_S);
            seen.awaitNumber(80);
            seen.forget();
            player.play();
            awaitPlayedOut(player);
            List<Integer> numbers =
                    seen.all().stream().map(SeenPictures.Seen::number).toList();
            assertEquals(IntStream.range(80, PICTURES).boxed().toList(), numbers);
        }
    }

    @Test
    void seekingWhilePlayingGoesOnPlaying() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            player.play();
            seen.awaitLast(picture -> picture.number() >= 10);
            player.seek(90.5 / PER_S);
            assertTrue(player.playing());
            awaitPlayedOut(player);
            List<Integer> numbers =
                    seen.all().stream().map(SeenPictures.Seen::number).toList();
            assertEquals(
                    IntStream.range(90, PICTURES).boxed().toList(),
                    numbers.subList(numbers.size() - (PICTURES - 90), numbers.size()));
        }
    }

    @Test
    void stepsAreOnePictureEachBothWaysHoweverQuicklyTheyCome() throws Exception {
        List<Double> times = uneven();
        try (ClipPlayer player = ClipPlayer.open(clip(times), seen, out)) {
            player.step(1);
            player.step(1);
            player.step(1);
            seen.awaitNumber(3);
            int from = 74;
            player.seek(times.get(from + 1) + 0.001);
            player.step(-1);
            seen.awaitNumber(from);
            for (int i = 1; i <= 30; i++) {
                player.step(-1);
                seen.awaitNumber(from - i);
            }
            for (int i = 29; i >= 10; i--) {
                player.step(1);
                seen.awaitNumber(from - i);
            }
            player.step(-1000);
            seen.awaitNumber(0);
        }
    }

    @Test
    void pausingStaysAtThePictureThatIsSeen() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            player.play();
            seen.awaitLast(picture -> picture.number() >= 40);
            player.pause();
            awaitPlayedOut(player);
            int stoodAt = (int) Math.round(player.timeS() * PER_S);
            player.step(1);
            seen.awaitNumber(stoodAt + 1);
            assertEquals((stoodAt + 1) / PER_S, player.soundS(), 1e-3);
        }
    }

    /** Three times round a second: picture and sound go on without a gap and do not drift. */
    @Test
    void aLoopGoesRoundWithoutAGapInSync() throws Exception {
        Loop loop = new Loop(1, 2.1);
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            player.loop(Optional.of(loop));
            player.seek(0.5);
            player.play();
            seen.await(() -> seen.all().stream()
                            .filter(picture -> picture.number() == 31)
                            .count()
                    == 4);
            List<SeenPictures.Seen> all = seen.all();
            float[] heard = out.heard();
            player.pause();
            int first = IntStream.range(0, all.size())
                    .filter(i -> all.get(i).number() == 16)
                    .findFirst()
                    .orElseThrow();
            List<Integer> expected =
                    new ArrayList<>(IntStream.range(16, 63).boxed().toList());
            for (int lap = 0; lap < 2; lap++) {
                expected.addAll(IntStream.range(30, 63).boxed().toList());
            }
            expected.addAll(List.of(30, 31));
            assertEquals(
                    expected,
                    all.stream()
                            .skip(first)
                            .limit(expected.size())
                            .map(SeenPictures.Seen::number)
                            .toList());
            for (int i = first; i < all.size(); i++) {
                int place = i - first;
                int lap = place < 47 ? 0 : 1 + (place - 47) / 33;
                double dueS = all.get(i).timeS() - 0.5 + lap * 1.1;
                assertEquals(dueS, all.get(i).playedS(), APART_S, "picture " + place);
            }
            // half a second, one, one and a half, two; then from the loop's beginning again
            List<Double> onsets = onsetsS(heard);
            double[] wanted = {0, 0.5, 1, 1.5, 1.6, 2.1, 2.6, 2.7, 3.2, 3.7};
            assertTrue(onsets.size() >= wanted.length, onsets.toString());
            for (int i = 1; i < wanted.length; i++) {
                assertEquals(wanted[i], onsets.get(i), 0.01, "beep " + i + " of " + onsets);
            }
        }
    }

    @Test
    void clicksAreHeardAtTheirTimesTheStrongOnesHigher() throws Exception {
        Path silent = NumberedClip.write(
                folder.resolve("silent.mp4"), NumberedClip.evenly(PICTURES, PER_S), Optional.empty(), 0);
        try (ClipPlayer player = ClipPlayer.open(silent, seen, out)) {
            assertEquals(Optional.of("This clip has no sound."), player.note());
            player.clicks(List.of(new Click(0.7, true), new Click(1.3, false), new Click(3.2, false)));
            player.speed(0.5);
            player.play();
            awaitPlayedOut(player);
            float[] heard = out.heard();
            List<Double> onsets = onsetsS(heard);
            assertEquals(3, onsets.size(), onsets.toString());
            assertEquals(1.4, onsets.get(0), 0.001);
            assertEquals(2.6, onsets.get(1), 0.001);
            assertEquals(6.4, onsets.get(2), 0.001);
            assertTrue(rises(heard, onsets.get(0)) > 1.3 * rises(heard, onsets.get(1)));
            assertEquals(PICTURES - 1, seen.last().number());
        }
    }

    /** How often it rises through zero within 15 ms. */
    private static long rises(float[] heard, double fromS) {
        int from = (int) (fromS * ClipSound.SAMPLES_PER_S);
        return IntStream.range(from + 1, from + 720)
                .filter(i -> heard[i - 1] < 0 && heard[i] >= 0)
                .count();
    }

    @Test
    void timeThatLeapsCostsPicturesButNotSync() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            player.play();
            seen.awaitLast(picture -> picture.number() >= 20);
            out.leap(0.5);
            awaitPlayedOut(player);
            List<SeenPictures.Seen> all = seen.all();
            assertTrue(player.counts().dropped() > 0, player.counts().toString());
            assertEquals(PICTURES - 1, player.counts().shown() + player.counts().dropped());
            SeenPictures.Seen last = all.get(all.size() - 1);
            assertEquals(PICTURES - 1, last.number());
            assertEquals(last.timeS(), last.playedS(), APART_S);
            for (int i = 2; i < all.size(); i++) {
                assertTrue(all.get(i).number() > all.get(i - 1).number());
            }
        }
    }

    @Test
    void picturesThatAreLostBeginAnewWithTheSound() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            player.play();
            seen.awaitLast(picture -> picture.number() >= 20);
            out.leap(1.5);
            awaitPlayedOut(player);
            List<SeenPictures.Seen> all = seen.all();
            SeenPictures.Seen anew = all.stream()
                    .skip(20)
                    .filter(picture -> picture.playedS() == 0)
                    .findFirst()
                    .orElseThrow();
            assertTrue(anew.number() >= 20 + 1.5 * PER_S, anew.toString());
            List<SeenPictures.Seen> then = all.subList(all.indexOf(anew), all.size());
            assertEquals(PICTURES - anew.number(), then.size());
            for (SeenPictures.Seen picture : then) {
                assertEquals(picture.timeS() - anew.timeS(), picture.playedS(), APART_S);
            }
        }
    }

    @Test
    void withoutASoundOutputASteadyClockIsFollowed() throws Exception {
        SteadyClock clock = new SteadyClock();
        SeenPictures pictures = new SeenPictures(clock);
        try (ClipPlayer player = ClipPlayer.open(clip(), pictures, clock)) {
            assertEquals(
                    Optional.of("Nothing is heard, because this computer has no sound output that is free."),
                    player.note());
            player.seek(3);
            player.play();
            pictures.await(() -> pictures.stops() > 0);
            assertEquals(PICTURES - 1, pictures.last().number());
        }
    }

    @Test
    void aClipThatWasCutOffIsPlayedAsFarAsItGoesAndSaid() throws Exception {
        Path whole = folder.resolve("whole.mkv");
        TestClips.write(whole, NumberedClip.evenly(90, 30), t -> NumberedClip.picture((int) Math.round(t * 30)));
        byte[] bytes = Files.readAllBytes(whole);
        Path cut = folder.resolve("cut.mkv");
        Files.write(cut, Arrays.copyOf(bytes, bytes.length / 2));
        try (ClipPlayer player = ClipPlayer.open(cut, seen, out)) {
            player.play();
            awaitPlayedOut(player);
            assertTrue(seen.last().number() > 20 && seen.last().number() < 70, seen.last() + "");
            String note = player.note().orElseThrow();
            assertTrue(note.startsWith("cut.mkv could be read up to"), note);
        }
    }

    @Test
    void picturesAreAsLargeAsWantedAndAtTheEndItBeginsAgain() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            seen.awaitNumber(0);
            player.fit(80, 300);
            seen.awaitLast(picture -> picture.widthPx() == 80);
            assertEquals(48, seen.last().heightPx());
            player.seek(3.5);
            player.play();
            awaitPlayedOut(player);
            assertEquals(80, seen.last().widthPx());
            player.play();
            seen.await(() -> seen.all().stream().anyMatch(picture -> picture.number() == 2));
        }
    }

    @Test
    void closingWhilePlayingLetsGoOfEverything() throws Exception {
        Path file = clip();
        ClipPlayer player = ClipPlayer.open(file, seen, out);
        player.loop(Optional.of(new Loop(1, 2)));
        player.play();
        seen.awaitLast(picture -> picture.number() >= 10);
        player.close();
        int shown = seen.all().size();
        player.awaitClosed();
        assertEquals(shown, seen.all().size(), "nothing is shown after closing");
        assertTrue(out.closed());
        player.play();
        player.close();
    }

    @Test
    void whatIsNoVideoIsRefusedAndTheOutputLetGoOf() throws Exception {
        Path file = folder.resolve("clip.mp4");
        Files.writeString(file, "not a video at all");
        assertThrows(InputException.class, () -> ClipPlayer.open(file, seen, out));
        assertTrue(out.closed());
    }

    @Test
    void aSpeedBeyondItsBoundsIsRefused() throws Exception {
        try (ClipPlayer player = ClipPlayer.open(clip(), seen, out)) {
            assertThrows(IllegalArgumentException.class, () -> player.speed(1.5));
            assertThrows(IllegalArgumentException.class, () -> player.speed(Double.NaN));
        }
    }
}
