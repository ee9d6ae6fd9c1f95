package tuttarco.corrections;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.files.InputException;

/** Beats of another source with those moved that somebody moved by hand, as the log beside a take says. */
public record MovedBeats(BeatSource source, Path takeFile) implements BeatSource {
    @Override
    public BeatMap beats() throws InputException {
        return told().beats();
    }

    @Override
    public Told told() throws InputException {
        Told told = source.told();
        CorrectionLog log = CorrectionLog.of(takeFile);
        CorrectedBeats corrected = CorrectedBeats.of(Optional.of(told.beats()), log.corrections());
        List<String> notes = new ArrayList<>(told.notes());
        notes.addAll(corrected.notes());
        notes.addAll(log.notes());
        return new Told(corrected.beats().orElseThrow(), notes);
    }
}
