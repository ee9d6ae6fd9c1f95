package tuttarco.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tuttarco.beats.BeatMap;
import tuttarco.beats.PartTimes;
import tuttarco.beats.TimedSpan;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.PlayedStrokes;
import tuttarco.corrections.CorrectionLog;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.mark.BowMarks;
import tuttarco.mark.PlayerMarking;
import tuttarco.musicxml.PartDocument;
import tuttarco.score.Part;
import tuttarco.seats.Player;
import tuttarco.strokes.Reading;
import tuttarco.take.Take;

/** From a take to the bow signs that one player's bowing gives its part. */
public final class PartMarking {
    private final Take take;
    private final Player player;
    private final PartDocument document;

    private PartMarking(Take take, Player player, PartDocument document) {
        this.take = take;
        this.player = player;
        this.document = document;
    }

    /**
     * Looks whether a player's signs can be written into a take's part, before anything is read that takes long.
     *
     * @param label the player's label in the take
     * @throws InputException if the take has no such player, or no part that can be written into
     */
    public static PartMarking of(Take take, String label) throws InputException {
        Player player = player(take, label);
        Path partFile = take.part()
                .orElseThrow(() -> new InputException(
                        "there is no part to write bow signs into; add the part to " + InputBytes.name(take.file())));
        return new PartMarking(take, player, PartDocument.read(partFile));
    }

    /**
     * The signs by what was read of the whole section, as the report has it, so that both say the same of the player.
     *
     * @param every a sign on every stroke, not only where a reader needs one
     * @throws InputException if the beats, as they are moved, don't fit the part, or it can't be written
     */
    public MarkedPart by(Uncorrected read, CorrectionLog log, boolean every, CompareSettings settings)
            throws InputException {
        Part part = read.part().orElseThrow();
        Corrected corrected = Corrected.of(read, log.corrections());
        BeatMap beats = corrected.beats().orElseThrow();
        PartTimes times = PartTimes.of(part, beats);
        Reading played = corrected.readings().stream()
                .filter(r -> r.player().equals(player))
                .findFirst()
                .orElseThrow();
        List<TimedSpan> begun = times.spans().stream()
                .filter(s -> times.secondsAt(s.span().start()).contains(s.startS()))
                .toList();
        BowMarks marks = PlayerMarking.of(part, PlayedStrokes.of(played.strokes(), begun, settings), every);
        List<String> notes = new ArrayList<>();
        read.told().ifPresent(told -> notes.addAll(told.notes()));
        notes.addAll(read.section().notes());
        notes.addAll(corrected.notes());
        int place = document.place(take.partChoice(), TakeParts.instrument(take));
        return new MarkedPart(document.marked(place, marks.marks()), player.label(), marks, notes);
    }

    private static Player player(Take take, String label) throws InputException {
        return take.players().stream()
                .filter(p -> p.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new InputException("no player in " + InputBytes.name(take.file()) + " is called '"
                        + Plain.text(label) + "'; the players are "
                        + take.players().stream()
                                .map(p -> "'" + Plain.text(p.label()) + "'")
                                .collect(Collectors.joining(", "))));
    }
}
