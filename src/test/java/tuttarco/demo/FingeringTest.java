package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.strokes.StrokeKind;

/** What each player's bow sounds; at 200 beats a minute from 1 s on, in bars of four. */
class FingeringTest {
    private static final double BEAT_S = 0.3;

    private static List<ToneStroke> tones(Instrument instrument, Deviation... deviations) {
        Scene scene = SceneFixture.of(List.of(new Cast(instrument, Facing.CAMERA, deviations)));
        return Fingering.tones(scene, Layout.of(scene)).lines().get(0).strokes();
    }

    /** The tune begins D5 A4 B4 B4 D5 (equal temperament on 440 Hz); larger instruments play octaves below. */
    @ParameterizedTest
    @CsvSource({"VIOLIN,1", "VIOLA,2", "VIOL,2", "CELLO,4", "BASS,8"})
    void eachStrokeHasTheNextNoteOfTheTune(Instrument instrument, double lower) {
        double[] hz = {587.33, 440, 493.88, 493.88, 587.33};
        List<ToneStroke> tones = tones(instrument);
        assertEquals(8, tones.size());
        for (int i = 0; i < hz.length; i++) {
            assertEquals(hz[i] / lower, tones.get(i).pitchHz(), 0.01);
        }
    }

    @Test
    void tonesBeginAndEndWithTheStrokes() {
        Scene scene = SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Turned(2, 2))));
        Layout layout = Layout.of(scene);
        List<Travel> strokes = layout.performers().get(0).motion().travels().stream()
                .filter(t -> t.kind() != StrokeKind.STILL)
                .toList();
        List<ToneStroke> tones = Fingering.tones(scene, layout).lines().get(0).strokes();
        assertEquals(8, strokes.size());
        assertEquals(strokes.size(), tones.size());
        for (int i = 0; i < strokes.size(); i++) {
            assertEquals(strokes.get(i).startS(), tones.get(i).startS());
            assertEquals(strokes.get(i).endS(), tones.get(i).endS());
            assertEquals(strokes.get(i).from(), tones.get(i).fromPlace(), 1e-9);
            assertEquals(strokes.get(i).to(), tones.get(i).toPlace(), 1e-9);
        }
    }

    /** Nobody is uneven by more than 25 ms. */
    @ParameterizedTest
    @CsvSource({"0", "150", "-80"})
    void aLagIsHeard(double lagMs) {
        double[] beats = {0, 2, 4, 5, 6, 7, 8, 10};
        List<ToneStroke> tones = tones(Instrument.VIOLIN, new Deviation.Lags(lagMs));
        assertEquals(beats.length, tones.size());
        for (int i = 0; i < beats.length; i++) {
            assertEquals(1 + BEAT_S * beats[i] + lagMs / 1000, tones.get(i).startS(), 0.025 + 1e-9);
        }
    }

    /** Changing the bow anywhere, a player still sounds the note that the part has: in its middle at the latest. */
    @Test
    void whoeverBowsFreelyPlaysTheSameNotes() {
        List<ToneStroke> marked = tones(Instrument.CELLO);
        List<ToneStroke> free = tones(Instrument.CELLO, new Deviation.Free());
        assertTrue(free.stream().anyMatch(t -> t.speakS() == Fingering.SLURRED_S), "notes under one bow");
        for (ToneStroke note : marked) {
            double middleS = (note.startS() + note.endS()) / 2;
            List<Double> heard = free.stream()
                    .filter(t -> t.startS() <= middleS && middleS < t.endS())
                    .map(ToneStroke::pitchHz)
                    .toList();
            assertEquals(List.of(note.pitchHz()), heard);
        }
    }

    @Test
    void whoeverDoesNotBowIsNotHeard() {
        List<ToneStroke> tones = tones(Instrument.VIOLIN, new Deviation.Silent(2, 2));
        assertEquals(4, tones.size());
        assertTrue(
                tones.stream().noneMatch(t -> t.endS() > 1 + 4 * BEAT_S + 0.05 && t.startS() < 1 + 8 * BEAT_S - 0.05));
    }

    /** So many short strokes a second, all on the bar's notes. */
    @Test
    void tremoloRepeatsTheNote() {
        List<ToneStroke> tones = tones(Instrument.VIOLIN, new Deviation.Tremolo(1, 1, 10));
        List<Double> first = tones.stream()
                .filter(t -> t.startS() < 1 + 4 * BEAT_S - 0.05)
                .map(ToneStroke::pitchHz)
                .toList();
        assertEquals(12, first.size());
        for (int i = 0; i < 12; i++) {
            assertEquals(i < 6 ? 587.33 : 440, first.get(i), 0.01);
        }
    }

    @Test
    void playersAreOutOfTuneAndRockTheirHandsEachInTheirOwnWay() {
        Cast cast = new Cast(Instrument.VIOLIN, Facing.CAMERA);
        Scene scene = SceneFixture.of(List.of(cast, cast, cast));
        List<Tones.Line> lines = Fingering.tones(scene, Layout.of(scene)).lines();
        assertEquals(3, lines.stream().map(l -> l.voice().tuning()).distinct().count());
        assertEquals(
                3, lines.stream().map(l -> l.voice().vibratoHz()).distinct().count());
        lines.forEach(l -> assertEquals(1, l.voice().tuning(), 0.01));
    }
}
