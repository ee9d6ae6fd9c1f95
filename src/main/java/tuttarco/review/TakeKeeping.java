package tuttarco.review;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import tuttarco.files.InputBytes;
import tuttarco.files.OutputException;
import tuttarco.take.Take;
import tuttarco.take.TakeOnDisk;
import tuttarco.take.TakeOnDisk.ChangedElsewhereException;

/** Saves takes in their files, but never over what another window or an editor wrote there in the meantime. */
public final class TakeKeeping implements Keeping {
    private final Map<Path, Draft> opened = new HashMap<>();
    private final Map<Path, TakeOnDisk> files = new HashMap<>();

    @Override
    public synchronized void opened(Draft draft) {
        opened.put(draft.file(), draft);
        files.remove(draft.file());
    }

    @Override
    public synchronized String keep(Draft draft) throws OutputException, ChangedElsewhereException {
        Optional<Take> take = draft.take();
        if (take.isEmpty()) {
            return "Not saved yet, for nobody sits in the picture.";
        }
        file(draft).write(take.get());
        return "Saved in " + InputBytes.name(draft.file()) + ".";
    }

    private TakeOnDisk file(Draft draft) throws OutputException {
        Path file = draft.file();
        if (!files.containsKey(file)) {
            Optional<Take> held = Optional.ofNullable(opened.get(file)).flatMap(Draft::take);
            files.put(file, TakeOnDisk.holding(file, held));
        }
        return files.get(file);
    }
}
