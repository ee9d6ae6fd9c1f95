package tuttarco.review;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tuttarco.analysis.Music;
import tuttarco.analysis.Stand;
import tuttarco.analysis.Uncorrected;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.corrections.CorrectedBeats;
import tuttarco.corrections.Corrections;
import tuttarco.corrections.LogEntry;
import tuttarco.files.InputException;
import tuttarco.score.Part;
import tuttarco.take.BeatsGiven;

/** Where the beats lie: how they are given, what that gives, and the anchors that set it right; with undo and redo. */
public final class BeatsModel {
    /** What is known of the beats. */
    public sealed interface State {
        /** There are none to be had yet: why, and what to do. */
        record None(String sentence) implements State {}

        /** They have to be listened for, which takes a while. */
        record Unheard() implements State {}

        /** They are read or listened for, since {@code sinceMs} of the system's clock. */
        record Telling(boolean listening, long sinceMs) implements State {}

        /**
         * The beats.
         *
         * @param source as they were given or heard; {@code beats} corrected by the anchors
         * @param notes what is to be told of them
         */
        record Told(BeatMap source, BeatMap beats, List<String> notes) implements State {}

        /** They can't be had: why, and what to do. */
        record Wrong(String sentence) implements State {}
    }

    /** Times given by hand are kept to the millisecond. */
    private static final double GRAIN_S = 0.001;

    /** What the beats were told from; what is written over the part does not matter to them. */
    private record From(Stand stand, Optional<Part> part) {}

    private final Session session;
    private final PartModel part;
    private final Listeners onChange = new Listeners();
    private final Deque<BeatsGiven> done = new ArrayDeque<>();
    private final Deque<BeatsGiven> undone = new ArrayDeque<>();
    private Optional<Path> take = Optional.empty();
    private State state = new State.None("");
    private Optional<From> from = Optional.empty();
    private List<Beat> applied = List.of();
    private Background.Going telling = new Background.Going();
    private OptionalInt chosen = OptionalInt.empty();
    private OptionalInt lastMoved = OptionalInt.empty();

    BeatsModel(Session session, PartModel part) {
        this.session = session;
        this.part = part;
        session.onDraft().add(this::lookAnew);
        part.onChange().add(this::lookAnew);
        session.onAnalysed().add(this::analysed);
    }

    public Listeners onChange() {
        return onChange;
    }

    public State state() {
        return state;
    }

    /** The beats with anchors, where they are known. */
    public Optional<BeatMap> beats() {
        return state instanceof State.Told told ? Optional.of(told.beats()) : Optional.empty();
    }

    /** How the take gives them, without anchors. */
    public BeatsGiven source() {
        BeatsGiven given = given();
        return given instanceof BeatsGiven.Anchored anchored ? anchored.source() : given;
    }

    public List<Beat> anchors() {
        return given() instanceof BeatsGiven.Anchored anchored ? anchored.anchors() : List.of();
    }

    private BeatsGiven given() {
        return session.draft().map(Draft::beats).orElse(new BeatsGiven.Missing());
    }

    /** Gives the beats in another way; anchors stay where they can. */
    public void give(BeatsGiven source) {
        boolean keeps = !(source instanceof BeatsGiven.Missing) && !anchors().isEmpty();
        change(keeps ? new BeatsGiven.Anchored(source, anchors()) : source);
        lastMoved = OptionalInt.empty();
    }

    private void change(BeatsGiven now) {
        BeatsGiven before = given();
        if (!now.equals(before)) {
            done.push(before);
            undone.clear();
            put(now);
        }
    }

    private void put(BeatsGiven now) {
        session.draft().ifPresent(draft -> session.change(draft.withBeats(now)));
    }

    public boolean canUndo() {
        return !done.isEmpty();
    }

    public boolean canRedo() {
        return !undone.isEmpty();
    }

    public void undo() {
        step(done, undone);
    }

    public void redo() {
        step(undone, done);
    }

    private void step(Deque<BeatsGiven> back, Deque<BeatsGiven> forth) {
        if (!back.isEmpty()) {
            BeatsGiven to = back.pop();
            forth.push(given());
            lastMoved = OptionalInt.empty();
            put(to);
        }
    }

    /** Listens for the beats, if they have to be. */
    public void hear() {
        if (state instanceof State.Unheard || state instanceof State.Wrong) {
            from.ifPresent(known -> tell(known, listens(source())));
        }
    }

    /** Stops listening. */
    public void stop() {
        if (state instanceof State.Telling) {
            telling.stop();
            show(new State.Unheard());
        }
    }

    /** The number of the beat that is chosen on the sound. */
    public OptionalInt chosen() {
        return chosen;
    }

    public void choose(int index) {
        beats().filter(map -> index >= 0 && index < map.beats().size()).ifPresent(map -> {
            chosen = OptionalInt.of(index);
            onChange.tell();
        });
    }

    /** Chooses the next line of a bar, or with {@code by} -1 the one before; the first if none is chosen. */
    public void chooseBar(int by) {
        beats().ifPresent(map -> {
            int at = chosen.orElse(by > 0 ? -1 : map.beats().size()) + by;
            while (at >= 0 && at < map.beats().size() && !map.beginsBar(at)) {
                at += by;
            }
            choose(at);
        });
    }

    /** Chooses the next beat, or with {@code by} -1 the one before. */
    public void chooseBeat(int by) {
        choose(chosen.orElse(-by) + by);
    }

    /** Moves the beat that is chosen, which becomes an anchor. */
    public void nudge(double byS) {
        beats().ifPresent(map ->
                chosen.ifPresent(index -> move(index, map.beats().get(index).timeS() + byS)));
    }

    /** Moves a beat, by its number, to a time; it becomes an anchor there. */
    public void move(int index, double timeS) {
        if (!(state instanceof State.Told told)) {
            return;
        }
        if (source() instanceof BeatsGiven.HeardClicks) {
            session.trouble(
                    "Clicks are where they are heard; say which bar they begin with, or give the beats in another"
                            + " way.");
            return;
        }
        Beat beat = told.beats().beats().get(index);
        if (movedInReview(beat)) {
            session.trouble("Somebody moved " + beat.spoken() + " in Review; undo that there to move it here.");
            return;
        }
        List<Beat> anchors = new ArrayList<>(anchors());
        anchors.removeIf(anchor -> holds(anchor, beat));
        anchors.add(BeatsGiven.anchor(beat.bar(), beat.beat(), Math.round(timeS / GRAIN_S) * GRAIN_S));
        boolean goesOn = lastMoved.equals(OptionalInt.of(index)) && !done.isEmpty();
        if (anchor(anchors)) {
            if (goesOn) {
                // one line moved bit by bit is one change
                done.pop();
            }
            lastMoved = OptionalInt.of(index);
        }
    }

    /** Whether a correction is why a beat is where it is. */
    public static boolean movedInReview(Beat beat) {
        return beat.source().equals(Beat.BY_HAND);
    }

    /** Whether an anchor is why a beat is where it is. */
    public static boolean holds(Beat anchor, Beat beat) {
        return anchor.bar().equals(beat.bar())
                && anchor.beat() == beat.beat()
                && Math.abs(anchor.timeS() - beat.timeS()) < GRAIN_S / 2;
    }

    public void removeAnchor(Beat anchor) {
        List<Beat> others = new ArrayList<>(anchors());
        others.remove(anchor);
        lastMoved = OptionalInt.empty();
        anchor(others);
    }

    /** Removes the anchor of the beat that is chosen, if it has one. */
    public void freeChosen() {
        beats().ifPresent(map -> chosen.ifPresent(index -> anchors().stream()
                .filter(anchor -> holds(anchor, map.beats().get(index)))
                .findFirst()
                .ifPresent(this::removeAnchor)));
    }

    /** Adds anchors, in the place of those of the same beats. */
    void addAnchors(List<Beat> added) {
        List<Beat> anchors = new ArrayList<>(anchors());
        anchors.removeIf(old ->
                added.stream().anyMatch(anchor -> anchor.bar().equals(old.bar()) && anchor.beat() == old.beat()));
        anchors.addAll(added);
        lastMoved = OptionalInt.empty();
        anchor(anchors);
    }

    /** Corrects the beats by these anchors and no others, if they fit. */
    private boolean anchor(List<Beat> anchors) {
        try {
            if (state instanceof State.Told told) {
                Music.anchored(told.source(), anchors);
            }
        } catch (InputException e) {
            session.trouble(e.getMessage());
            return false;
        }
        BeatsGiven source = source() instanceof BeatsGiven.Missing ? new BeatsGiven.HeardByPart() : source();
        change(anchors.isEmpty() ? source : new BeatsGiven.Anchored(source, anchors));
        return true;
    }

    private void lookAnew() {
        Optional<Draft> draft = session.draft();
        if (!draft.map(Draft::file).equals(take)) {
            take = draft.map(Draft::file);
            done.clear();
            undone.clear();
        }
        Optional<From> now = draft.map(this::from);
        if (now.isEmpty()) {
            return;
        }
        if (sameAs(now.get())) {
            if (!anchors().equals(applied)) {
                showAnchored();
            }
            return;
        }
        from = now;
        telling.stop();
        chosen = OptionalInt.empty();
        lastMoved = OptionalInt.empty();
        show(missing().<State>map(State.None::new).orElseGet(State.Unheard::new));
        if (state instanceof State.Unheard && !listens(source())) {
            tell(now.get(), false);
        }
    }

    private boolean sameAs(From now) {
        return from.filter(before -> before.stand().equals(now.stand())
                        && before.part().orElse(null) == now.part().orElse(null))
                .isPresent();
    }

    private From from(Draft draft) {
        BeatsGiven told = source() instanceof BeatsGiven.HeardClicks ? given() : source();
        // beats that are not given are heard by the part
        BeatsGiven asked = told instanceof BeatsGiven.Missing ? new BeatsGiven.HeardByPart() : told;
        Draft bare = draft.withPart(draft.part(), draft.partChoice(), Optional.empty())
                .withBeats(asked);
        return new From(bare.stand(), part.under());
    }

    private Optional<String> missing() {
        boolean needPart = source().needPart() || source() instanceof BeatsGiven.Missing;
        if (part.state() instanceof PartModel.State.Reading) {
            return Optional.of("The part is being read.");
        }
        if (part.under().isPresent() || !needPart) {
            return Optional.empty();
        }
        return Optional.of(
                source() instanceof BeatsGiven.Missing
                        ? "Without a part and beats the section is compared with its leader's strokes; add a part, or"
                                + " give the beats as a list."
                        : "These beats need a part that can be read; see to the part first, or give the beats as a"
                                + " list.");
    }

    /** Whether telling them means listening to the sound. */
    private static boolean listens(BeatsGiven given) {
        return !(given instanceof BeatsGiven.Listed || given instanceof BeatsGiven.Steady);
    }

    private void tell(From known, boolean listening) {
        show(new State.Telling(listening, System.currentTimeMillis()));
        telling = session.background()
                .run(
                        () -> Music.source(known.stand(), known.part()),
                        this::told,
                        sentence -> show(new State.Wrong(sentence)));
    }

    private void told(BeatSource.Told told) {
        state = new State.Told(told.beats(), told.beats(), told.notes());
        showAnchored();
    }

    /** What the reading of the bows heard need not be heard again, and shows the beats that were moved since. */
    private void analysed() {
        if (state instanceof State.Unheard && anchors().isEmpty()) {
            session.uncorrected().flatMap(Uncorrected::told).ifPresent(this::told);
        } else if (state instanceof State.Told) {
            showAnchored();
        }
    }

    /** Shows the beats as the anchors of now, and the corrections of what was read, have them. */
    private void showAnchored() {
        applied = anchors();
        if (state instanceof State.Told told) {
            // anchors of clicks only say which they are
            boolean fixed = source() instanceof BeatsGiven.HeardClicks;
            state = new State.Told(told.source(), fixed ? told.source() : corrected(told.source()), told.notes());
        }
        onChange.tell();
    }

    private BeatMap corrected(BeatMap source) {
        Corrections moved = Corrections.of(session.analysed()
                .<List<LogEntry>>map(take -> List.copyOf(take.corrected()))
                .orElse(List.of()));
        try {
            BeatMap held = Music.anchored(source, applied);
            return CorrectedBeats.of(Optional.of(held), moved).beats().orElse(held);
        } catch (InputException e) {
            session.trouble(e.getMessage());
            return source;
        }
    }

    private void show(State other) {
        state = other;
        applied = anchors();
        onChange.tell();
    }
}
