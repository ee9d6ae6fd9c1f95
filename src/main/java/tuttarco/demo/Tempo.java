package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.score.Bar;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;

/**
 * A steady beat: where the part's positions lie in the clip.
 *
 * @param stops in the order played
 */
record Tempo(Part part, double beatsPerMinute, double startS, List<Stop> stops) {
    /** Bars played without a stop, by their indices; the last is exclusive. */
    private record Run(int fromBar, int toBar, double startS) {
        boolean holds(Position position) {
            return fromBar <= position.barIndex() && position.barIndex() < toBar;
        }
    }

    /** A stroke of the part as it is played once. */
    record Played(double startS, double endS, MarkedStroke stroke, int number) {}

    Tempo {
        stops = List.copyOf(stops);
    }

    private List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        int fromBar = 0;
        double atS = startS;
        for (Stop stop : stops) {
            Run run = run(fromBar, stop.afterBar(), atS);
            runs.add(run);
            fromBar = stop.fromBar() - 1;
            atS = endS(run) + stop.pauseS();
        }
        runs.add(run(fromBar, part.bars().size(), atS));
        return runs;
    }

    private Run run(int fromBar, int toBar, double atS) {
        if (fromBar >= toBar || toBar > part.bars().size()) {
            throw new IllegalArgumentException("a part of " + part.bars().size() + " bars can't be played from bar "
                    + (fromBar + 1) + " to the end of bar " + toBar);
        }
        return new Run(fromBar, toBar, atS);
    }

    /** When a place of the part is played for the first time. */
    double timeS(Position position) {
        return runs().stream()
                .filter(run -> run.holds(position))
                .findFirst()
                .map(run -> timeS(run, position))
                .orElseThrow(() -> new IllegalArgumentException("nobody plays " + position));
    }

    private double timeS(Run run, Position position) {
        double beats = position.beat() - part.bars().get(position.barIndex()).firstBeat();
        for (Bar bar : part.bars().subList(run.fromBar(), position.barIndex())) {
            beats += bar.lengthBeats();
        }
        return run.startS() + beats * 60 / beatsPerMinute;
    }

    /** When all is over, seconds. */
    double endS() {
        List<Run> runs = runs();
        return endS(runs.get(runs.size() - 1));
    }

    private double endS(Run run) {
        int last = run.toBar() - 1;
        Bar bar = part.bars().get(last);
        return timeS(run, new Position(last, bar.firstBeat() + bar.lengthBeats()));
    }

    /** When nobody plays, one for each stop. */
    List<Spell> pauses() {
        List<Run> runs = runs();
        List<Spell> pauses = new ArrayList<>();
        for (int i = 1; i < runs.size(); i++) {
            pauses.add(new Spell(endS(runs.get(i - 1)), runs.get(i).startS(), 0));
        }
        return pauses;
    }

    /** The strokes in the order played; what is played twice is there twice. */
    List<Played> strokes() {
        List<Played> played = new ArrayList<>();
        for (Run run : runs()) {
            int number = 0;
            for (PartSpan span : part.spans()) {
                if (span instanceof MarkedStroke stroke) {
                    if (run.holds(stroke.start())) {
                        played.add(new Played(timeS(run, stroke.start()), timeS(run, stroke.end()), stroke, number));
                    }
                    number++;
                }
            }
        }
        return played;
    }

    BeatMap beats() {
        return BeatMap.ofStretches(runs().stream().map(this::beats).toList());
    }

    private List<Beat> beats(Run run) {
        List<Beat> beats = new ArrayList<>();
        for (int i = run.fromBar(); i < run.toBar(); i++) {
            Bar bar = part.bars().get(i);
            for (int beat = 1; beat <= bar.lengthBeats(); beat++) {
                double timeS = timeS(run, new Position(i, beat));
                beats.add(new Beat(bar.number(), beat, timeS, OptionalDouble.of(0), Beat.TEMPO));
            }
        }
        return beats;
    }
}
