package tuttarco.corrections;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tuttarco.beats.BeatMap;
import tuttarco.files.Plain;
import tuttarco.strokes.StrokeKind;

/** Corrections in words, as parts of a sentence. */
public final class CorrectionWords {
    private CorrectionWords() {}

    /** Whom or what a correction is about, and what it says: {@code Nora, 12.40 to 12.90 s: up}. */
    public static String of(Correction correction) {
        return of(correction, Optional.empty());
    }

    /** The same with the beat it begins at, where that is known: {@code Nora, bar 3 beat 2 (12.40 to 12.90 s): up}. */
    public static String of(Correction correction, Optional<BeatMap> beats) {
        if (correction instanceof Correction.StrokeSet set) {
            return span(set.player(), set.fromS(), set.toS(), beats)
                    + set.kind().word();
        }
        if (correction instanceof Correction.Absent absent) {
            return span(absent.player(), absent.fromS(), absent.toS(), beats) + "absent";
        }
        if (correction instanceof Correction.ChangeMoved moved) {
            return Plain.text(moved.player()) + ": the change at "
                    + place(moved.fromS(), seconds(moved.fromS()) + " s", beats) + " moved to "
                    + seconds(moved.toS()) + " s";
        }
        Correction.BeatMoved moved = (Correction.BeatMoved) correction;
        return "bar " + Plain.text(moved.bar()) + " beat " + moved.beat() + " moved from " + seconds(moved.fromS())
                + " to " + seconds(moved.toS()) + " s";
    }

    /** The old value, the longest first: {@code was down and unsure}; empty for a move, which tells it itself. */
    public static Optional<String> was(LogEntry.Done done) {
        return done.wasS().isEmpty()
                ? Optional.empty()
                : Optional.of("was "
                        + done.wasS().entrySet().stream()
                                .sorted(Map.Entry.<StrokeKind, Double>comparingByValue()
                                        .reversed()
                                        .thenComparing(Map.Entry.comparingByKey()))
                                .map(e -> e.getKey().word())
                                .collect(Collectors.joining(" and ")));
    }

    /** How many corrections count, as a sentence; empty where none does. */
    public static Optional<String> sum(List<LogEntry.Done> applied) {
        int readings = 0;
        int beats = 0;
        for (LogEntry.Done done : applied) {
            if (done.correction() instanceof Correction.BeatMoved) {
                beats++;
            } else {
                readings++;
            }
        }
        List<String> sums = new ArrayList<>();
        if (readings > 0) {
            sums.add(readings == 1 ? "1 reading" : readings + " readings");
        }
        if (beats > 0) {
            sums.add(beats == 1 ? "1 beat" : beats + " beats");
        }
        String were = readings + beats == 1 ? " was" : " were";
        return sums.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(" and ", sums) + were + " corrected by hand.");
    }

    private static String span(String player, double fromS, double toS, Optional<BeatMap> beats) {
        return Plain.text(player) + ", " + place(fromS, seconds(fromS) + " to " + seconds(toS) + " s", beats) + ": ";
    }

    /** The time as it is told, after the beat that is meant where one is. */
    private static String place(double timeS, String told, Optional<BeatMap> beats) {
        return beats.flatMap(map -> map.meantBy(timeS).map(i -> map.beats().get(i)))
                .map(beat -> Plain.text(beat.spoken()) + " (" + told + ")")
                .orElse(told);
    }

    private static String seconds(double timeS) {
        return String.format(Locale.ROOT, "%.2f", timeS);
    }
}
