package tuttarco.review;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import tuttarco.analysis.ClipLook;
import tuttarco.demo.Demo;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.Plain;
import tuttarco.files.WholeFolder;
import tuttarco.take.TakeFile;
import tuttarco.video.ClipFacts;

/** Taking up a take: a video, a take's file, one of those that were open lately, or a sample. */
public final class Opening {
    /** Where a sample is put in the folder the user picks. */
    private static final String SAMPLE = "tuttarco-sample";

    private final Session session;
    private final Remembered remembered;
    private final Predicate<Path> writable;
    private final Listeners onChange = new Listeners();
    private List<Remembered.Recent> recent = List.of();
    private boolean noteRead;
    private State state = new State.Waiting();
    private Optional<Found> found = Optional.empty();
    private Background.Going going = new Background.Going();

    public Opening(Session session, Remembered remembered) {
        this(session, remembered, Files::isWritable);
    }

    /**
     * @param writable whether something can be written in a folder
     */
    public Opening(Session session, Remembered remembered, Predicate<Path> writable) {
        this.session = session;
        this.remembered = remembered;
        this.writable = writable;
        noteRead = remembered.noteRead();
        look();
        session.onDraft().add(this::draftChanged);
    }

    /**
     * What was found in a file.
     *
     * @param opened the file that was given
     * @param notes what will make the reading hard, and what to do
     */
    public record Found(Path opened, Draft draft, ClipFacts facts, List<String> notes) {}

    /** What goes on. */
    public sealed interface State {
        record Waiting() implements State {}

        /** A file is looked at. */
        record Looking(Path file) implements State {}

        /** The sample is drawn; {@code percent} of it is done. */
        record Drawing(int percent) implements State {}

        /** Files are copied to another place. */
        record Copying() implements State {}

        /** The take can't be saved where it lies: another place is needed. */
        record NeedsPlace(Found found) implements State {
            public String sentence() {
                return "Nothing can be saved in the folder of " + InputBytes.name(found.opened())
                        + "; choose another one, and it is copied there.";
            }
        }
    }

    /**
     * The take in a file: as it was set up if it is a take or if the take of a video lies beside it, else a video of which
     * nothing is known yet.
     *
     * @throws InputException if it is neither a take nor a video
     */
    public static Found find(Path file) throws InputException {
        Path opened = file.toAbsolutePath().normalize();
        if (Files.isDirectory(opened)) {
            throw new InputException(
                    Plain.text(opened.toString()) + " is a folder; choose a video or a take file in it.");
        }
        boolean take = InputBytes.name(opened).endsWith(Draft.ENDING);
        Path beside = take ? opened : Draft.takeOf(opened);
        if (take && !Files.exists(opened)) {
            throw new InputException("There is no take at " + Plain.text(opened.toString())
                    + "; it may have been moved or given another name.");
        }
        Draft draft = Files.exists(beside) ? Draft.of(TakeFile.read(beside)) : Draft.ofVideo(opened);
        ClipLook clip = ClipLook.of(draft.video());
        return new Found(opened, draft, clip.facts(), clip.notes());
    }

    /** Looks at a file and takes up what it holds, unless it can't be saved there. */
    public void open(Path file) {
        stop();
        become(new State.Looking(file));
        going = session.background().run(() -> find(file), this::take, this::fail);
    }

    /** Takes up what was found. */
    public void take(Found what) {
        Path folder = what.draft().file().getParent();
        if (!writable.test(folder)) {
            become(new State.NeedsPlace(what));
            session.trouble(((State.NeedsPlace) state).sentence());
            return;
        }
        found = Optional.of(what);
        state = new State.Waiting();
        session.open(what.draft());
        sayWhatWasFound(what);
        remember(() -> remembered.opened(what.opened(), what.draft()));
    }

    /** Copies what could not be saved where it lies to another folder, and takes it up there. */
    public void copyTo(Path folder) {
        if (state instanceof State.NeedsPlace needed) {
            become(new State.Copying());
            going = session.background()
                    .run(() -> find(TakeCopy.of(needed.found().draft(), folder)), this::take, this::fail);
        }
    }

    /** Draws a sample take into a folder of its own in this one and takes it up; one that is there already is taken. */
    public void sample(Path folder) {
        stop();
        become(new State.Drawing(0));
        going = session.background().run(() -> find(sampleIn(folder)), this::take, this::fail);
    }

    private Path sampleIn(Path folder) throws OutputException, InterruptedException {
        Path own = folder.resolve(SAMPLE);
        Path take = own.resolve("unified" + Draft.ENDING);
        if (!Files.exists(take)) {
            WholeFolder.write(own, inside -> Demo.writeUnified(inside, this::drawn));
        }
        return take;
    }

    private void drawn(int percent) {
        session.background().tell(() -> {
            if (state instanceof State.Drawing drawing && percent > drawing.percent()) {
                become(new State.Drawing(percent));
            }
        });
    }

    /** Stops what goes on; what was open stays open. */
    public void stop() {
        going.stop();
        become(new State.Waiting());
    }

    private void fail(String sentence) {
        become(new State.Waiting());
        session.trouble(sentence);
        look();
    }

    private void sayWhatWasFound(Found what) {
        String name = InputBytes.name(what.draft().file());
        boolean known = !what.draft().players().isEmpty();
        boolean asked = what.opened().equals(what.draft().file());
        if (!what.notes().isEmpty()) {
            session.trouble(String.join(" ", what.notes()));
        } else if (known && !asked) {
            session.say("Its take " + name + " was beside it, so that is open; nothing of it was written over.");
        } else {
            session.say(InputBytes.name(what.opened()) + " is open; what you do is saved in " + (asked ? "it" : name)
                    + ".");
        }
    }

    /** What is open. */
    public Optional<Found> found() {
        return found;
    }

    private void draftChanged() {
        Optional<Path> file = session.draft().map(Draft::file);
        found = found.filter(f -> Optional.of(f.draft().file()).equals(file));
        onChange.tell();
    }

    public State state() {
        return state;
    }

    private void become(State other) {
        state = other;
        onChange.tell();
    }

    public List<Remembered.Recent> recent() {
        return recent;
    }

    /** Takes a line out of the list of what was open lately. */
    public void forget(Path file) {
        remember(() -> remembered.forget(file));
    }

    public boolean noteRead() {
        return noteRead;
    }

    /** The user has read the note on filming. */
    public void readNote() {
        noteRead = true;
        onChange.tell();
        remember(remembered::readNote);
    }

    /** The user wants to see the note again. */
    public void showNote() {
        noteRead = false;
        onChange.tell();
    }

    @FunctionalInterface
    private interface Remembering {
        void run() throws OutputException;
    }

    private void remember(Remembering what) {
        session.background()
                .inOrder(
                        () -> {
                            what.run();
                            return remembered.recent();
                        },
                        this::listed,
                        why -> session.trouble("The list of takes can't be kept. " + why));
    }

    private void look() {
        session.background().run(remembered::recent, this::listed, session::trouble);
    }

    private void listed(List<Remembered.Recent> others) {
        recent = others;
        onChange.tell();
    }

    public Listeners onChange() {
        return onChange;
    }
}
