package tuttarco.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tuttarco.analysis.Music;
import tuttarco.analysis.Stand;
import tuttarco.files.InputBytes;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;
import tuttarco.score.Typed;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;

/** The part on the stand: which file, which of its parts and how it is played, what is written over it. */
public final class PartModel {
    /** What became of reading the part. */
    public sealed interface State {
        /** The take names none. */
        record None() implements State {}

        record Reading() implements State {}

        record Read(Music.OnStand onStand) implements State {}

        /** It can't be read: why, and what to do. */
        record Wrong(String sentence) implements State {}
    }

    /** What a file that is chosen is for. */
    public enum Use {
        PART,
        OVER
    }

    /**
     * A file outside the take's folder, which can be copied there.
     *
     * @param file as it was chosen
     */
    public record Offer(Use use, Path file) {
        public String sentence() {
            return InputBytes.name(file) + " lies outside the take's folder, where a take can't name it; copy it beside"
                    + " the take?";
        }
    }

    private final Session session;
    private final Listeners onChange = new Listeners();
    private State state = new State.None();
    private List<String> names = List.of();
    private Optional<Offer> offer = Optional.empty();
    private Optional<Stand> read = Optional.empty();
    private Background.Going reading = new Background.Going();

    PartModel(Session session) {
        this.session = session;
        session.onDraft().add(this::readAnew);
    }

    public Listeners onChange() {
        return onChange;
    }

    public State state() {
        return state;
    }

    /** The part with what is written over it, where it could be read. */
    public Optional<Part> part() {
        return state instanceof State.Read done ? Optional.of(done.onStand().whole()) : Optional.empty();
    }

    /** The part without what is written over it. */
    Optional<Part> under() {
        return state instanceof State.Read done ? Optional.of(done.onStand().under()) : Optional.empty();
    }

    /** What the parts in the file are called; empty where it holds one that is not called anything. */
    public List<String> names() {
        return names;
    }

    /** A file that waits for being copied beside the take. */
    public Optional<Offer> offer() {
        return offer;
    }

    /** Takes a file, or offers to copy it if it lies elsewhere. */
    public void choose(Use use, Path file) {
        Path chosen = file.toAbsolutePath().normalize();
        session.draft().ifPresent(draft -> {
            if (draft.mayName(chosen)) {
                offer = Optional.empty();
                take(use, chosen);
            } else {
                offer = Optional.of(new Offer(use, chosen));
                onChange.tell();
            }
        });
    }

    /** Copies the file offered beside the take, and takes it. */
    public void copyOffered() {
        Offer accepted = offer.orElseThrow();
        Path folder = session.draft().orElseThrow().file().getParent();
        session.background()
                .run(
                        () -> CopyBeside.copy(accepted.file(), folder),
                        copy -> {
                            offer = Optional.empty();
                            take(accepted.use(), copy);
                        },
                        session::trouble);
    }

    public void declineOffer() {
        offer = Optional.empty();
        onChange.tell();
    }

    private void take(Use use, Path file) {
        Draft draft = session.draft().orElseThrow();
        session.change(
                use == Use.PART
                        ? draft.withPart(Optional.of(file), PartChoice.DEFAULT, Optional.empty())
                        : draft.withPart(draft.part(), draft.partChoice(), Optional.of(file)));
    }

    /** Takes the part away, and beats that need one with it. */
    public void takeAway(Use use) {
        session.draft().ifPresent(draft -> {
            if (use == Use.OVER) {
                session.change(draft.withPart(draft.part(), draft.partChoice(), Optional.empty()));
                return;
            }
            Draft without = draft.withPart(Optional.empty(), PartChoice.DEFAULT, Optional.empty());
            session.change(draft.beats().needPart() ? without.withBeats(new BeatsGiven.Missing()) : without);
        });
    }

    public void choice(PartChoice choice) {
        session.draft()
                .filter(draft -> !draft.partChoice().equals(choice))
                .ifPresent(draft -> session.change(draft.withPart(draft.part(), choice, draft.over())));
    }

    public void bowing(Bowing bowing) {
        session.draft()
                .filter(draft -> draft.bowing() != bowing)
                .ifPresent(draft -> session.change(draft.withBowing(bowing)));
    }

    /** Takes what was typed for the part, whose file holds it already. */
    void typed(Use use, Path file, Part typed) {
        Draft draft = session.draft().orElseThrow();
        Part under = use == Use.PART ? typed : under().orElse(typed);
        Draft changed = use == Use.PART
                ? draft.withPart(
                        Optional.of(file),
                        PartChoice.DEFAULT,
                        draft.part().equals(Optional.of(file)) ? draft.over() : Optional.empty())
                : draft.withPart(draft.part(), draft.partChoice(), Optional.of(file));
        reading.stop();
        read = Optional.of(barely(changed));
        names = use == Use.PART ? List.of() : names;
        state = new State.Read(new Music.OnStand(under, typed));
        session.change(changed);
        onChange.tell();
    }

    /** What was typed for the part is wrong. */
    void wrong(Use use, Path file, Typed.Wrong wrong) {
        session.draft()
                .filter(draft -> (use == Use.PART ? draft.part() : draft.over()).equals(Optional.of(file)))
                .ifPresent(draft -> {
                    reading.stop();
                    if (use == Use.PART) {
                        state = new State.Wrong(InputBytes.name(file) + ": " + wrong.spoken());
                    }
                    session.change(draft);
                    onChange.tell();
                });
    }

    /** Reads the part if it is another than before. */
    private void readAnew() {
        Optional<Stand> now = session.draft().map(PartModel::barely);
        if (now.equals(read)) {
            return;
        }
        read = now;
        reading.stop();
        names = List.of();
        offer = Optional.empty();
        Optional<Path> file = now.flatMap(Stand::part);
        if (file.isEmpty()) {
            show(new State.None());
            return;
        }
        show(new State.Reading());
        Stand stand = now.get();
        session.background()
                .run(
                        () -> Music.partNames(file.get()),
                        found -> {
                            if (now.equals(read)) {
                                names = found;
                                onChange.tell();
                            }
                        },
                        sentence -> {});
        reading = session.background()
                .run(
                        () -> Music.part(stand).orElseThrow(),
                        found -> show(new State.Read(found)),
                        sentence -> show(new State.Wrong(sentence)));
    }

    /** Why the part can't be read, and what to do; empty where it can, or where there is none. */
    public Optional<String> trouble() {
        boolean several = names.size() > 1
                && session.draft().flatMap(draft -> draft.partChoice().part()).isEmpty();
        return state instanceof State.Wrong wrong
                ? Optional.of(wrong.sentence() + (several ? "; choose it in Part in the file." : ""))
                : Optional.empty();
    }

    private void show(State other) {
        state = other;
        onChange.tell();
    }

    /** The stand as far as it says which part it is. */
    private static Stand barely(Draft draft) {
        return draft.withBeats(new BeatsGiven.Missing()).stand();
    }
}
