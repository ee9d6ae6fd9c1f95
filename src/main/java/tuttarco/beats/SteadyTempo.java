package tuttarco.beats;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import tuttarco.files.InputException;
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

    /** What is rounded to whole units errs evenly within half a unit: its standard deviation is the unit over this. */
    private static final double ROUNDING = Math.sqrt(12);

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
        double firstQuarters = part.bars().get(0).metre().quartersPerBeat();
        double quarterS = SECONDS_A_MINUTE / tempoBpm / firstQuarters;
        List<Beat> beats = new PartRuler(part)
                .beats().stream()
                        .map(mark -> new Beat(
                                part.bars().get(mark.position().barIndex()).number(),
                                (int) mark.position().beat(),
                                startS + mark.quarters() * quarterS,
                                OptionalDouble.of(stderrS(mark.quarters() * quarterS)),
                                Beat.TEMPO))
                        .toList();
        if (beats.size() < 2) {
            throw new InputException("the part is shorter than two beats, too short for a tempo; give more of it");
        }
        return new BeatMap(beats);
    }

    private double stderrS(double sinceStartS) {
        return Math.hypot(lastDigit(startS), sinceStartS * lastDigit(tempoBpm) / tempoBpm) / ROUNDING;
    }

    /** The unit of a figure's last decimal, 1 for a whole number: {@code 0.01} of {@code 1.84}. */
    private static double lastDigit(double figure) {
        int decimals = BigDecimal.valueOf(figure).stripTrailingZeros().scale();
        return BigDecimal.ONE.scaleByPowerOfTen(-Math.max(0, decimals)).doubleValue();
    }
}
