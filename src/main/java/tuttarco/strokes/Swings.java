package tuttarco.strokes;

import java.util.ArrayList;
import java.util.List;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/** A reading as what the arm did one after the other, with motion too quick for strokes cut out of the strokes. */
final class Swings {
    private final List<ArmSample.Seen> samples;
    private final boolean[] quick;
    private final List<Stroke> pieces = new ArrayList<>();

    private Swings(List<ArmSample.Seen> samples) {
        this.samples = samples;
        quick = QuickMotion.of(samples);
    }

    /** The swings cover what the reading covers. */
    static List<Swing> of(Reading reading, ArmTrack track) {
        Swings swings = new Swings(track.samples().stream()
                .filter(ArmSample.Seen.class::isInstance)
                .map(ArmSample.Seen.class::cast)
                .toList());
        swings.cut(reading.strokes());
        return swings.measured();
    }

    private void cut(List<Stroke> strokes) {
        int first = 0;
        for (Stroke stroke : strokes) {
            int end = endOf(stroke, first);
            double cursorS = stroke.startS();
            for (int i = first + 1; i <= end; i++) {
                if (i < end && quick[i] == quick[i - 1]) {
                    continue;
                }
                double untilS = i == end
                        ? stroke.endS()
                        : (samples.get(i - 1).timeS() + samples.get(i).timeS()) / 2;
                add(stroke, cursorS, untilS, quick[i - 1]);
                cursorS = untilS;
            }
            if (cursorS < stroke.endS()) {
                add(stroke, cursorS, stroke.endS(), false);
            }
            first = end;
        }
    }

    private int endOf(Stroke stroke, int first) {
        int end = first;
        while (end < samples.size() && samples.get(end).timeS() < stroke.endS()) {
            end++;
        }
        return end;
    }

    private void add(Stroke stroke, double startS, double endS, boolean isQuick) {
        if (!isQuick) {
            pieces.add(stroke.during(startS, endS));
            return;
        }
        int last = pieces.size() - 1;
        if (last >= 0 && pieces.get(last).kind() == StrokeKind.TREMOLO) {
            pieces.set(last, new Stroke(pieces.get(last).startS(), endS, StrokeKind.TREMOLO, 1));
        } else {
            pieces.add(new Stroke(startS, endS, StrokeKind.TREMOLO, 1));
        }
    }

    private List<Swing> measured() {
        List<Swing> swings = new ArrayList<>();
        int first = 0;
        for (Stroke piece : pieces) {
            int end = endOf(piece, first);
            swings.add(Swing.of(piece, samples.subList(first, end)));
            first = end;
        }
        return swings;
    }
}
