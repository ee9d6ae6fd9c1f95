package tuttarco.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.seats.DeskLabels;
import tuttarco.seats.Names;
import tuttarco.seats.Player;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Reading;
import tuttarco.take.Take;
import tuttarco.tracks.ArmTrack;

/** Calls the players of takes as they are called in what is handed out: in all that was read of a take, and said of it. */
public final class Called {
    private final UnaryOperator<String> label;
    private final Optional<String> note;

    /** @param takes in the order played; whoever sits in several is called alike in all */
    public Called(Names names, List<Take> takes) {
        if (names == Names.SHOWN) {
            label = UnaryOperator.identity();
            note = Optional.empty();
        } else {
            List<Take> latestFirst = new ArrayList<>(takes);
            Collections.reverse(latestFirst);
            DeskLabels labels = new DeskLabels(
                    latestFirst.stream().flatMap(t -> t.players().stream()).toList());
            label = labels::of;
            note = labels.note();
        }
    }

    /** What a player is called, by the label in the take. */
    public String label(String inTake) {
        return label.apply(inTake);
    }

    /** What a reader must know of these names, a sentence; mostly nothing. */
    public Optional<String> note() {
        return note;
    }

    private Player player(Player player) {
        return player.called(label(player.label()));
    }

    /** What was read of a take. */
    public Uncorrected read(Uncorrected read) {
        Take take = read.take();
        SectionReading section = read.section();
        return new Uncorrected(
                new Take(
                        take.file(),
                        take.title(),
                        take.video(),
                        take.players().stream().map(this::player).toList(),
                        take.part(),
                        take.partChoice(),
                        take.over(),
                        take.beats(),
                        take.bowing(),
                        take.day()),
                read.part(),
                read.told(),
                new SectionReading(
                        section.clip(),
                        section.endS(),
                        section.tracks().stream()
                                .map(t -> new ArmTrack(
                                        player(t.player()), t.startS(), t.endS(), t.samples(), t.body(), t.shots()))
                                .toList(),
                        section.readings().stream()
                                .map(r -> new Reading(player(r.player()), r.strokes()))
                                .toList(),
                        section.bows().stream()
                                .map(b -> new Bows(player(b.player()), b.bows(), b.sharedErrorS()))
                                .toList(),
                        section.trouble()),
                read.heard(),
                read.sha256());
    }

    /** What was corrected in it. */
    public CorrectionLog log(CorrectionLog log) {
        return new CorrectionLog(log.entries().stream().map(this::entry).toList(), log.notes(), log.sha256());
    }

    private LogEntry entry(LogEntry entry) {
        return entry instanceof LogEntry.Done done
                ? new LogEntry.Done(done.id(), done.at(), correction(done.correction()), done.wasS())
                : entry;
    }

    private Correction correction(Correction correction) {
        if (correction instanceof Correction.StrokeSet set) {
            return new Correction.StrokeSet(label(set.player()), set.fromS(), set.toS(), set.kind());
        }
        if (correction instanceof Correction.ChangeMoved moved) {
            return new Correction.ChangeMoved(label(moved.player()), moved.fromS(), moved.toS());
        }
        return correction instanceof Correction.Absent absent
                ? new Correction.Absent(label(absent.player()), absent.fromS(), absent.toS())
                : correction;
    }
}
