package tuttarco.review;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import tuttarco.report.AnalysedTake;

/**
 * One take in the window: as it is set up, as it was read, what is chosen in it, and what the user is told. It belongs to
 * the window's thread.
 */
public final class Session {
    private final Background background;
    private final Keeping keeping;
    private Optional<Draft> draft = Optional.empty();
    private Optional<AnalysedTake> analysed = Optional.empty();
    private Choice choice = Choice.START;
    private Message message = Message.said("");
    private final Listeners onDraft = new Listeners();
    private final Listeners onAnalysed = new Listeners();
    private final Listeners onChoice = new Listeners();
    private final Listeners onMessage = new Listeners();
    private final List<Consumer<String>> onGoTo = new CopyOnWriteArrayList<>();

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
        onDraft.tell();
        analysed(Optional.empty());
        onChoice.tell();
    }

    /** Changes the take, and saves it as soon as somebody sits in it. What was read before no longer counts. */
    public void change(Draft changed) {
        draft = Optional.of(changed);
        background.run(() -> keeping.keep(changed), this::say, this::trouble);
        onDraft.tell();
        analysed(Optional.empty());
    }

    /** What was read of the take as it is now. */
    public Optional<AnalysedTake> analysed() {
        return analysed;
    }

    public void analysed(Optional<AnalysedTake> read) {
        analysed = read;
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

    public Listeners onMessage() {
        return onMessage;
    }
}
