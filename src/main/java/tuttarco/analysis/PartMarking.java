package tuttarco.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tuttarco.beats.BeatSource;
import tuttarco.beats.PartTimes;
import tuttarco.beats.TimedSpan;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.PlayedStrokes;
import tuttarco.corrections.CorrectedReadings;
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
    private final SectionReader sectionReader;
    private final CompareSettings compareSettings;

    public PartMarking(SectionReader sectionReader, CompareSettings compareSettings) {
        this.sectionReader = sectionReader;
        this.compareSettings = compareSettings;
    }

    /**
     * Reads the whole section, as the report does, so that both say the same of the player.
     *
     * @param label the player's label in the take
     * @param every a sign on every stroke, not only where a reader needs one
     * @throws InputException if a file the take names can't be read or is not valid, or the take has no such player
     * @throws NothingSeenException if nothing could be read from the picture
     * @throws InterruptedException if the thread was interrupted
     */
    public MarkedPart of(Take take, String label, boolean every, SectionReader.Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        Player player = player(take, label);
        Path partFile = take.part()
                .orElseThrow(() -> new InputException(
                        "there is no part to write bow signs into; add the part to " + InputBytes.name(take.file())));
        PartDocument document = PartDocument.read(partFile);
        Part part = TakeParts.part(take).orElseThrow();
        BeatSource.Told told = TakeParts.beats(take, Optional.of(part)).told();
        PartTimes times = PartTimes.of(part, told.beats());

        SectionReading read = sectionReader.read(take.video(), take.players(), progress);

        CorrectedReadings corrected = CorrectedReadings.of(
                read.readings(), CorrectionLog.of(take.file()).corrections());
        Reading played = corrected.readings().stream()
                .filter(r -> r.player().equals(player))
                .findFirst()
                .orElseThrow();
        List<TimedSpan> begun = times.spans().stream()
                .filter(s -> times.secondsAt(s.span().start()).contains(s.startS()))
                .toList();
        BowMarks marks = PlayerMarking.of(part, PlayedStrokes.of(played.strokes(), begun, compareSettings), every);
        List<String> notes = new ArrayList<>(told.notes());
        notes.addAll(read.notes());
        notes.addAll(corrected.notes());
        return new MarkedPart(document, document.place(take.partChoice(), TakeParts.instrument(take)), marks, notes);
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
