package tuttarco.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.files.Plain;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.Hand;
import tuttarco.video.Shot;

/** What whoever reads the readings of a clip should know, in sentences. */
final class ReadingNotes {
    /** So many stretches of time are named in one sentence. */
    private static final int MOST_SPANS = 5;

    private ReadingNotes() {}

    static List<String> of(Optional<String> trouble, List<ArmTrack> tracks) {
        List<String> notes = new ArrayList<>();
        trouble.ifPresent(notes::add);
        tracks.stream().findFirst().flatMap(ReadingNotes::otherViews).ifPresent(notes::add);
        notes.addAll(leftHands(tracks));
        notes.addAll(Unseen.notes(tracks));
        return notes;
    }

    /** When the clip does not show what it started with: the same for all players. */
    private static Optional<String> otherViews(ArmTrack track) {
        List<String> spans = new ArrayList<>();
        double fromS = Double.NaN;
        for (int i = 0; i <= track.shots().size(); i++) {
            boolean ends = i == track.shots().size();
            boolean other = !ends && track.shots().get(i).view() != Shot.View.FIRST;
            double timeS = ends ? track.endS() : track.shots().get(i).startS();
            if (other && Double.isNaN(fromS)) {
                fromS = timeS;
            } else if (!other && !Double.isNaN(fromS)) {
                spans.add(String.format(Locale.ROOT, "%.1f to %.1f s", fromS, timeS));
                fromS = Double.NaN;
            }
        }
        if (spans.isEmpty()) {
            return Optional.empty();
        }
        String more = spans.size() > MOST_SPANS ? " and " + (spans.size() - MOST_SPANS) + " times more" : "";
        return Optional.of("Nobody is read from "
                + String.join(", ", spans.subList(0, Math.min(MOST_SPANS, spans.size())))
                + more + ", where the clip shows another view than at its start, in which the seats are;"
                + " to read another view, make a clip and a take of its own for it.");
    }

    /** Bows in left hands: a mirrored picture if most are, else players to look at. */
    private static List<String> leftHands(List<ArmTrack> tracks) {
        List<ArmTrack> known =
                tracks.stream().filter(t -> t.bowHand().isPresent()).toList();
        List<String> left = known.stream()
                .filter(t -> t.bowHand().get() == Hand.LEFT)
                .map(t -> Plain.text(t.player().label()))
                .toList();
        if (!left.isEmpty() && 2 * left.size() > known.size()) {
            return List.of("The picture seems to be mirrored, as front cameras do: bows are in left hands."
                    + " Strokes are read as the bows go all the same.");
        }
        return left.stream()
                .map(label ->
                        label + " seems to bow with the left hand; if that is wrong, look at this reading with care.")
                .toList();
    }
}
