package tuttarco.report;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.chart.AtTime;
import tuttarco.chart.BowTravel;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Evenness;
import tuttarco.compare.Togetherness;
import tuttarco.compare.Unity;
import tuttarco.corrections.LogEntry;
import tuttarco.score.Part;
import tuttarco.season.TakeOnRecord;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Reading;
import tuttarco.take.Take;
import tuttarco.tracks.ArmTrack;
import tuttarco.video.ClipFacts;

/**
 * Everything an output may show of one take.
 *
 * @param evenness empty where the clip has no sound
 * @param corrected what a person set right in {@code readings}, {@code bows} and the comparison's beats
 * @param sha256 of every input file by its role ({@code take}, {@code video}, {@code part}, {@code beats}, {@code corrections}), lower-case hex
 * @param settings the settings used, by name with unit
 * @param notes things to tell the reader, one sentence each: a truncated clip, players not seen, ...
 */
public record AnalysedTake(
        Take take,
        ClipFacts clip,
        double endS,
        List<ArmTrack> tracks,
        List<Reading> readings,
        List<Bows> bows,
        Optional<Part> part,
        Comparison comparison,
        Unity unity,
        Optional<Evenness> evenness,
        Togetherness together,
        List<LogEntry.Done> corrected,
        Map<String, String> sha256,
        Map<String, String> settings,
        String programVersion,
        List<String> notes) {
    /** What the section is first compared with: the marking, or the leader where nothing is marked. */
    public Against reference() {
        return part.isPresent() ? Against.MARKING : Against.LEADER;
    }

    /** What is shown of each player at any time. */
    public AtTime atTime() {
        return new AtTime(comparison, reference(), readings, tracks);
    }

    /** How a player's bow hand travelled, stretch by stretch; empty if nobody of this label was followed. */
    public Optional<List<List<BowTravel.Point>>> travel(String label) {
        return tracks.stream()
                .filter(t -> t.player().label().equals(label))
                .findFirst()
                .map(BowTravel::of);
    }

    /** When it was played: as the take says, or else the day the clip was made where that was. */
    public Optional<LocalDate> day(ZoneId zone) {
        return take.day().or(() -> clip.made().map(made -> LocalDate.ofInstant(made, zone)));
    }

    /** What is kept of it to set it beside other takes. */
    public TakeOnRecord onRecord(Optional<LocalDate> day) {
        return TakeOnRecord.of(take, sha256.get("video"), day, comparison, unity, together, evenness);
    }
}
