package tuttarco.analysis;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tuttarco.files.Plain;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/** Says whose bow arm was not seen, for how long and why; not where the clip shows another view, which is told once for all. */
final class Unseen {
    /** Nothing is said about a player who was unseen for less than this share of the clip. */
    private static final double WORTH_SAYING = 0.1;

    private Unseen() {}

    /** A sentence for each player who was unseen for long. */
    static List<String> notes(List<ArmTrack> tracks) {
        return tracks.stream().map(Unseen::note).flatMap(Optional::stream).toList();
    }

    private static Optional<String> note(ArmTrack track) {
        Map<ArmSample.Reason, Double> lostS = lostS(track);
        double lengthS = track.endS() - track.startS();
        double allS = lostS.values().stream().mapToDouble(s -> s).sum();
        if (allS < WORTH_SAYING * lengthS || lostS.isEmpty()) {
            return Optional.empty();
        }
        String reasons = lostS.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(e -> e.getKey().words() + (lostS.size() == 1 ? "" : seconds(" (%.1f s)", e.getValue())))
                .collect(Collectors.joining(", "));
        return Optional.of(Plain.text(track.player().label()) + " is not seen for "
                + seconds("%.1f", Math.min(allS, lengthS)) + seconds(" of %.1f s: ", lengthS) + reasons + ".");
    }

    /** Time lost for each reason, seconds; a sample speaks for the time until the next one. */
    private static Map<ArmSample.Reason, Double> lostS(ArmTrack track) {
        Map<ArmSample.Reason, Double> lostS = new EnumMap<>(ArmSample.Reason.class);
        List<ArmSample> samples = track.samples();
        for (int i = 0; i < samples.size(); i++) {
            double fromS = i == 0 ? track.startS() : samples.get(i).timeS();
            double untilS = i + 1 < samples.size() ? samples.get(i + 1).timeS() : track.endS();
            if (samples.get(i) instanceof ArmSample.Lost lost && lost.reason() != ArmSample.Reason.OTHER_VIEW) {
                lostS.merge(lost.reason(), untilS - fromS, Double::sum);
            }
        }
        return lostS;
    }

    private static String seconds(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
