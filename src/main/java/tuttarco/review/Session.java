package tuttarco.review;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.CorrectionLog;
import tuttarco.files.InputBytes;
import tuttarco.files.OutputException;
import tuttarco.report.AnalysedTake;
import tuttarco.take.TakeFile;
import tuttarco.take.TakeOnDisk.ChangedElsewhereException;

/**
 * One take in the window: as it is set up, as it was read, what is chosen in it, and what the user is told. It belongs to
 * the window's thread.
 */
public final class Session {
    private final Background background;
    private final Keeping keeping;
    private Optional<Draft> draft = Optional.empty();
    private Optional<Uncorrected> uncorrected = Optional.empty();
    private Optional<AnalysedTake> analysed = Optional.empty();
    private Choice choice = Choice.START;
    private Message message = Message.said("");
    private final AtomicReference<Draft> unsaved = new AtomicReference<>();
    private Saving saving = new Saving.Saved("");
    private final Listeners onDraft = new Listeners();
    private final Listeners onAnalysed = new Listeners();
    private final Listeners onChoice = new Listeners();
    private final Listeners onMessage = new Listeners();
    private final List<Consumer<String>> onGoTo = new CopyOnWriteArrayList<>();
    private final Listeners onSaving = new Listeners();

    public Session(Background background, Keeping keeping) {
        this.background = background;
        this.keeping = keeping;
    }

    public Background background() {
        return background;
    }

    public Optional<Draft> draft() {
        return draft;
    }

    /** Takes up another take, of which nothing was read yet. */
    public void open(Draft opened) {
        draft = Optional.of(opened);
        choice = Choice.START;
        keeping.opened(opened);
        saved(new Saving.Saved(""));
        onDraft.tell();
        analysed(Optional.empty());
        onChoice.tell();
    }

    /** Changes the take, and saves it as soon as somebody sits in it. What was read before no longer counts. */
    public void change(Draft changed) {
        draft = Optional.of(changed);
        save(changed);
        onDraft.tell();
        analysed(Optional.empty());
    }

    /** What was read of the take as it is now, before corrections: there where {@link #analysed()} is. */
    public Optional<Uncorrected> uncorrected() {
        return uncorrected;
    }

    /** Takes up what was read of the take, and what that comes to with the corrections there are. */
    public void read(Uncorrected read, AnalysedTake judged) {
        uncorrected = Optional.of(read);
        analysed(Optional.of(judged));
    }

    /** Of changes that come faster than they can be saved only the last is. */
    private void save(Draft changed) {
        unsaved.set(changed);
        background.inOrder(
                () -> {
                    Draft last = unsaved.getAndSet(null);
                    return last == null ? Optional.<Saving>empty() : Optional.of(outcome(last));
                },
                outcome -> outcome.ifPresent(this::saved),
                why -> saved(new Saving.Failed(why)));
    }

    private Saving outcome(Draft last) {
        try {
            return new Saving.Saved(keeping.keep(last));
        } catch (ChangedElsewhereException e) {
            return new Saving.ChangedElsewhere(e.getMessage());
        } catch (OutputException e) {
            return new Saving.Failed(e.getMessage());
        }
    }

    /** What went well takes no other sentence's place: it is shown beside. */
    private void saved(Saving outcome) {
        boolean told = saving instanceof Saving.Saved;
        saving = outcome;
        if (!(outcome instanceof Saving.Saved)) {
            trouble(outcome.sentence());
        } else if (!told) {
            say(outcome.sentence());
        }
        onSaving.tell();
    }

    /** How the last saving went. */
    public Saving saving() {
        return saving;
    }

    /** Tells when all that was changed so far is saved, or can't be; see {@link #saving()}. */
    public void whenSaved(Runnable told) {
        background.inOrder(() -> true, done -> told.run(), this::trouble);
    }

    /** Tries once more what could not be saved. */
    public void saveAgain() {
        draft.ifPresent(this::save);
    }

    /** Lets go of what was changed here and takes what the take's file holds now. */
    public void takeTheirs() {
        draft.ifPresent(mine -> background.inOrder(
                () -> Draft.of(TakeFile.read(mine.file())),
                theirs -> {
                    open(theirs);
                    say("This is " + InputBytes.name(theirs.file()) + " as it was changed elsewhere.");
                },
                this::trouble));
    }

    /** Goes on with what was changed here, in a file of its own beside the take's; the corrections go along. */
    public void keepMine() {
        draft.ifPresent(mine -> {
            Draft own = mine.numbered();
            keeping.opened(own.withPlayers(List.of()));
            background.inOrder(
                    () -> {
                        CorrectionLog.copy(mine.file(), own.file());
                        return own;
                    },
                    taken -> {},
                    this::trouble);
            change(own);
        });
    }

    /** What was read of the take as it is now, corrected. */
    public Optional<AnalysedTake> analysed() {
        return analysed;
    }

    /** Takes up what the reading comes to; nothing where the take has changed, so that it is to be read anew. */
    public void analysed(Optional<AnalysedTake> judged) {
        if (judged.isEmpty()) {
            uncorrected = Optional.empty();
        }
        analysed = judged;
        onAnalysed.tell();
    }

    public Choice choice() {
        return choice;
    }

    public void choose(Choice other) {
        if (!other.equals(choice)) {
            choice = other;
            onChoice.tell();
        }
    }

    public Message message() {
        return message;
    }

    public void say(String sentence) {
        say(Message.said(sentence));
    }

    public void trouble(String sentence) {
        say(Message.trouble(sentence));
    }

    private void say(Message told) {
        message = told;
        onMessage.tell();
    }

    /** The user goes on to another step, where what was said of this one means nothing; trouble stays until something else is told. */
    public void wentOn() {
        if (message.kind() == Message.Kind.SAID) {
            say("");
        }
    }

    /** Leads the user to a step of the work, named by its key. */
    public void goTo(String step) {
        onGoTo.forEach(listener -> listener.accept(step));
    }

    public void onGoTo(Consumer<String> listener) {
        onGoTo.add(listener);
    }

    public Listeners onDraft() {
        return onDraft;
    }

    public Listeners onAnalysed() {
        return onAnalysed;
    }

    public Listeners onChoice() {
        return onChoice;
    }

    public Listeners onSaving() {
        return onSaving;
    }

    public Listeners onMessage() {
        return onMessage;
    }
}
