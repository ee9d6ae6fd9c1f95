package tuttarco.beats;

import java.util.ArrayList;
import java.util.List;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Part;

/**
 * Every beat of a part at one tempo. Where the metre's lower figure changes, note values keep their length (common
 * practice, no source).
 *
 * @param tempoBpm beats a minute, 10 to 1000, a beat being the lower figure of the first bar's metre
 * @param startS when the part begins, pickup included, seconds from the clip's start; where the pickup begins between two
 *     beats, the earlier of them is listed too, before this time
 */
public record SteadyTempo(Part part, double tempoBpm, double startS) implements BeatSource {
    private static final double SECONDS_A_MINUTE = 60;

    public SteadyTempo {
        if (!(tempoBpm >= 10 && tempoBpm <= 1000)) {
            throw new IllegalArgumentException("a tempo lies between 10 and 1000 beats a minute, not " + tempoBpm);
        }
        if (!(Math.abs(startS) <= BeatList.LATEST_S)) {
            throw new IllegalArgumentException("a start is a time in seconds, not " + startS);
        }
    }

    @Override
    public BeatMap beats() throws InputException {
        List<Beat> beats = new ArrayList<>();
        double firstQuarters = part.bars().get(0).metre().quartersPerBeat();
        double quarterS = SECONDS_A_MINUTE / tempoBpm / firstQuarters;
        double barS = startS;
        for (int i = 0; i < part.bars().size(); i++) {
            Bar bar = part.bars().get(i);
            double beatS = bar.metre().quartersPerBeat() * quarterS;
            int first = (int) (i == 0 ? Math.floor(bar.firstBeat()) : Math.ceil(bar.firstBeat()));
            for (int beat = first; beat < bar.firstBeat() + bar.lengthBeats(); beat++) {
                beats.add(new Beat(bar.number(), beat, barS + (beat - bar.firstBeat()) * beatS));
            }
            barS += bar.lengthBeats() * beatS;
        }
        if (beats.size() < 2) {
            throw new InputException("the part is shorter than two beats, too short for a tempo; give more of it");
        }
        return new BeatMap(beats);
    }
}
