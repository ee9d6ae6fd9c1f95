package tuttarco.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.bow.Instrument;
import tuttarco.score.PartChoice;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;
import tuttarco.video.ClipFacts;

/** A take as it would be read, made without a clip: Ida, who leads, and Jon bow down and up in turn, a beat each. */
public final class ReadByHand {
    private static final double FRAMES_PER_S = 30;

    private ReadByHand() {}

    /** Ten seconds, a beat each. */
    public static Uncorrected take(Path folder) {
        return take(folder, List.of("Ida", "Jon"), 10, 1);
    }

    /** The same as another run would read it. */
    public static Uncorrected again(Uncorrected read) {
        return new Uncorrected(read.take(), read.part(), read.told(), read.section(), read.heard(), read.sha256());
    }

    /** @param labels of the players, the first of whom leads */
    static Uncorrected take(Path folder, List<String> labels, int beats, double beatS) {
        double seconds = beats * beatS;
        List<Player> players = new ArrayList<>();
        List<ArmTrack> tracks = new ArrayList<>();
        List<Reading> readings = new ArrayList<>();
        List<Bows> bows = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            Player player = new Player(
                    labels.get(i),
                    i / 2 + 1,
                    i % 2 == 0 ? Place.OUTSIDE : Place.INSIDE,
                    Instrument.VIOLIN,
                    new SeatBox(0, 0, 100, 100),
                    Optional.empty(),
                    i == 0);
            players.add(player);
            tracks.add(new ArmTrack(player, 0, seconds, samples(seconds, beatS)));
            readings.add(new Reading(player, strokes(beats, beatS)));
            bows.add(Bows.of(tracks.get(i), readings.get(i)));
        }
        Take take = new Take(
                folder.resolve("evening.take.json"),
                "Evening",
                folder.resolve("evening.mp4"),
                players,
                Optional.empty(),
                PartChoice.DEFAULT,
                Optional.empty(),
                new BeatsGiven.Steady(60, 0),
                Bowing.UNIFIED,
                Optional.empty());
        ClipFacts clip =
                new ClipFacts(take.video(), 1280, 720, FRAMES_PER_S, Optional.of(seconds), false, Optional.empty());
        return new Uncorrected(
                take,
                Optional.empty(),
                Optional.of(new BeatSource.Told(beatMap(beats, beatS), List.of())),
                new SectionReading(clip, seconds, tracks, readings, bows, Optional.empty()),
                new HeardLevel(Optional.empty(), Optional.empty()),
                Map.of());
    }

    private static BeatMap beatMap(int count, double beatS) {
        List<Beat> beats = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            beats.add(new Beat(Integer.toString(i / 4 + 1), i % 4 + 1, i * beatS));
        }
        return new BeatMap(beats);
    }

    private static List<Stroke> strokes(int beats, double beatS) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < beats; i++) {
            strokes.add(new Stroke(i * beatS, (i + 1) * beatS, i % 2 == 0 ? StrokeKind.DOWN : StrokeKind.UP, 0.95));
        }
        return strokes;
    }

    private static List<ArmSample> samples(double seconds, double beatS) {
        List<ArmSample> samples = new ArrayList<>();
        for (int i = 0; i < seconds * FRAMES_PER_S; i++) {
            double timeS = (i + 0.5) / FRAMES_PER_S;
            double phase = Math.PI * timeS / beatS;
            samples.add(new ArmSample.ByBody(timeS, Math.sin(phase), 0.02, 1, 1 - Math.cos(phase)));
        }
        return samples;
    }
}
