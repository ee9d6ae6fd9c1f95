package tuttarco.analysis;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.files.Plain;
import tuttarco.seats.Player;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Reading;
import tuttarco.take.Take;
import tuttarco.tracks.ArmTrack;

/** Calls the players of a take by their desk and place, for those who need not know their names. */
final class ByDesk {
    /** Who no longer sits in the take, but was corrected. */
    private static final String SOMEBODY = "Somebody";

    private final Map<String, Player> called = new LinkedHashMap<>();

    ByDesk(List<Player> players) {
        Map<String, Integer> times = new LinkedHashMap<>();
        for (Player player : players) {
            String name = "Desk " + player.desk() + " " + player.place().word();
            int before = times.merge(name, 1, Integer::sum) - 1;
            called.put(
                    player.label(),
                    new Player(
                            before == 0 ? name : name + " " + (before + 1),
                            player.desk(),
                            player.place(),
                            player.instrument(),
                            player.seat(),
                            player.facing(),
                            player.leader()));
        }
    }

    /** What a player is called, by the label in the take. */
    String label(String label) {
        return Optional.ofNullable(called.get(label)).map(Player::label).orElse(SOMEBODY);
    }

    private Player player(Player player) {
        return called.get(player.label());
    }

    Uncorrected of(Uncorrected read) {
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
                        section.notes().stream().map(this::unnamed).toList()),
                read.heard(),
                read.sha256());
    }

    CorrectionLog of(CorrectionLog log) {
        return new CorrectionLog(
                log.entries().stream().map(this::entry).toList(),
                log.notes().stream().map(this::unnamed).toList(),
                log.sha256());
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

    /** A sentence in which players are called so; longer labels first, for one may be the beginning of another. */
    private String unnamed(String sentence) {
        String said = sentence;
        for (String label : called.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList()) {
            said = said.replace(Plain.text(label), label(label));
        }
        return said;
    }
}
