package tuttarco.review;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tuttarco.analysis.Music;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatList;
import tuttarco.beats.BeatMap;
import tuttarco.beats.TappedBeats;
import tuttarco.beats.TappedBeats.Every;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFile;
import tuttarco.score.Part;
import tuttarco.take.BeatsGiven;

/** Beats tapped along with the sound, from a bar on. */
public final class Tapping {
    /** What a list of taps ends in, beside the take. */
    static final String ENDING = ".tapped.csv";

    private final Session session;
    private final PartModel part;
    private final BeatsModel beats;
    private final Listeners onChange = new Listeners();
    private final List<Double> tapsS = new ArrayList<>();
    private int fromBar;
    private Every every = Every.BEAT;
    private double lateS;

    Tapping(Session session, PartModel part, BeatsModel beats) {
        this.session = session;
        this.part = part;
        this.beats = beats;
    }

    public Listeners onChange() {
        return onChange;
    }

    /** Index of the bar in the part that the first tap begins. */
    public int fromBar() {
        return fromBar;
    }

    public Every every() {
        return every;
    }

    /** So much taps come late, seconds; taken off each of them. */
    public double lateS() {
        return lateS;
    }

    /** When the taps came, seconds of the clip, with nothing taken off. */
    public List<Double> tapsS() {
        return List.copyOf(tapsS);
    }

    /** Begins anew from a bar of the part. */
    public void from(int barIndex) {
        fromBar = barIndex;
        clear();
    }

    public void every(Every other) {
        every = other;
        clear();
    }

    public void lateS(double other) {
        lateS = other;
        onChange.tell();
    }

    /** Takes a tap. Where the sound was taken back, it goes on from there: later taps are forgotten. */
    public void tap(double clipS) {
        tapsS.removeIf(before -> before >= clipS);
        tapsS.add(clipS);
        onChange.tell();
    }

    /** Takes the last tap back. */
    public void takeBack() {
        if (!tapsS.isEmpty()) {
            tapsS.remove(tapsS.size() - 1);
            onChange.tell();
        }
    }

    public void clear() {
        tapsS.clear();
        onChange.tell();
    }

    /** What was tapped, once it is two beats. */
    public Optional<BeatMap> tapped() {
        return tapped(lateS);
    }

    private Optional<BeatMap> tapped(double takenOffS) {
        return part.part().flatMap(whole -> {
            try {
                return Optional.of(new TappedBeats(whole, fromBar, every, tapsS, takenOffS).beats());
            } catch (InputException tooFew) {
                return Optional.empty();
            }
        });
    }

    /** What the next tap means, as people say it; empty where the part is at its end. */
    public Optional<String> next() {
        return part.part().flatMap(whole -> TappedBeats.meant(whole, fromBar, every, tapsS.size()));
    }

    /** How late the taps come against the beats as they are known from elsewhere, if both are there. */
    public OptionalDouble measuredLateS() {
        Optional<BeatMap> known = beats.beats();
        Optional<BeatMap> raw = tapped(0);
        return known.isPresent() && raw.isPresent() ? Music.lateS(raw.get(), known.get()) : OptionalDouble.empty();
    }

    /** Makes the taps the take's list of beats, beside the take; no earlier list is written over. */
    public void keepAsList() {
        Optional<BeatMap> map = tapped();
        Optional<Draft> draft = session.draft();
        if (map.isEmpty() || draft.isEmpty()) {
            session.trouble("Tap at least two beats first.");
            return;
        }
        Path wanted = draft.get().beside(ENDING);
        session.background()
                .run(
                        () -> written(map.get(), wanted),
                        list -> {
                            tapsS.clear();
                            beats.give(new BeatsGiven.Listed(list));
                            onChange.tell();
                        },
                        session::trouble);
    }

    private static Path written(BeatMap map, Path wanted) throws OutputException {
        Path free = CopyBeside.free(wanted);
        WholeFile.write(free, BeatList.csv(map).getBytes(StandardCharsets.UTF_8));
        return free;
    }

    /** Makes each tap an anchor of the beats there are. */
    public void keepAsAnchors() {
        Optional<BeatMap> map = tapped();
        if (map.isEmpty() || beats.beats().isEmpty()) {
            session.trouble("Anchors set right beats that are there; hear the beats first, or make the taps a list.");
            return;
        }
        List<Beat> anchors = map.get().beats().stream()
                .filter(beat -> tapsS.stream().anyMatch(tapS -> Math.abs(tapS - lateS - beat.timeS()) < 1e-6))
                .map(beat -> BeatsGiven.anchor(beat.bar(), beat.beat(), beat.timeS()))
                .toList();
        tapsS.clear();
        beats.addAnchors(anchors);
        onChange.tell();
    }

    /** The bars of the part, as they are called in the order played. */
    public List<String> bars() {
        return part.part().map(Part::bars).orElse(List.of()).stream()
                .map(bar -> bar.number())
                .toList();
    }
}
