package tuttarco.review;

import tuttarco.files.OutputException;
import tuttarco.take.TakeOnDisk.ChangedElsewhereException;

/** Saves the take as one goes, in the order of the changes. */
public interface Keeping {
    /** The take that is worked on from now on. */
    void opened(Draft draft);

    /**
     * Saves the take, whole or not at all; a draft in which nobody sits is not saved yet.
     *
     * @return what to tell the user, a sentence
     * @throws OutputException if it can't be saved
     * @throws ChangedElsewhereException if its file holds what somebody else wrote, which is then left as it is
     */
    String keep(Draft draft) throws OutputException, ChangedElsewhereException;
}
