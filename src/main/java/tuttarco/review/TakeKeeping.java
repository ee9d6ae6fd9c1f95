package tuttarco.review;

import java.util.Optional;
import tuttarco.files.InputBytes;
import tuttarco.files.OutputException;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Saves takes in their files. */
public final class TakeKeeping implements Keeping {
    @Override
    public void opened(Draft draft) {}

    @Override
    public synchronized String keep(Draft draft) throws OutputException {
        Optional<Take> take = draft.take();
        if (take.isEmpty()) {
            return "Nobody sits in this take yet.";
        }
        TakeFile.write(take.get(), draft.file());
        return "Saved in " + InputBytes.name(draft.file()) + ".";
    }
}
