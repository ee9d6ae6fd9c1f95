package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.score.Bar;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;

/** A steady beat: where the part's positions lie in the clip. */
record Tempo(Part part, double beatsPerMinute, double startS) {
    double timeS(Position position) {
        double beats = position.beat() - part.bars().get(position.barIndex()).firstBeat();
        for (Bar bar : part.bars().subList(0, position.barIndex())) {
            beats += bar.lengthBeats();
        }
        return startS + beats * 60 / beatsPerMinute;
    }

    /** When the part is over, seconds. */
    double endS() {
        int last = part.bars().size() - 1;
        Bar bar = part.bars().get(last);
        return timeS(new Position(last, bar.firstBeat() + bar.lengthBeats()));
    }

    BeatMap beats() {
        List<Beat> beats = new ArrayList<>();
        for (int i = 0; i < part.bars().size(); i++) {
            Bar bar = part.bars().get(i);
            for (int beat = 1; beat <= bar.lengthBeats(); beat++) {
                beats.add(new Beat(bar.number(), beat, timeS(new Position(i, beat)), OptionalDouble.of(0), Beat.TEMPO));
            }
        }
        return new BeatMap(beats);
    }
}
