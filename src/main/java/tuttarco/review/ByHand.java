package tuttarco.review;

import java.util.Optional;
import java.util.function.Consumer;
import tuttarco.beats.Beat;
import tuttarco.corrections.Correction;
import tuttarco.strokes.StrokeKind;

/** Sets right what was read of the chosen player in the chosen beats. It belongs to the window's thread. */
public final class ByHand {
    private final Reviewing reviewing;
    private final Consumer<Correction> correcting;

    /** @param correcting takes what is set right */
    public ByHand(Reviewing reviewing, Consumer<Correction> correcting) {
        this.reviewing = reviewing;
        this.correcting = correcting;
    }

    /** The player did this in the chosen beats. */
    public void set(StrokeKind kind) {
        corrected(reviewing.stretch(), (player, s) -> new Correction.StrokeSet(player, s.fromS(), s.toS(), kind));
    }

    /** The player was not there in the bars of the chosen beats. */
    public void absent() {
        corrected(reviewing.bars(), (player, s) -> new Correction.Absent(player, s.fromS(), s.toS()));
    }

    private void corrected(Optional<Stretch> stretch, Said made) {
        reviewing.choice().player().ifPresent(player -> stretch.ifPresent(s -> correcting.accept(made.of(player, s))));
    }

    /** What is said of a player in a stretch. */
    @FunctionalInterface
    private interface Said {
        Correction of(String player, Stretch stretch);
    }

    /** A change of the chosen player's, or a beat, came at another time, seconds; nothing if it stays where it is. */
    public void move(Mark mark, double toS) {
        double within = mark.within(toS);
        if (within == mark.timeS()) {
            return;
        }
        switch (mark.kind()) {
            case CHANGE ->
                reviewing
                        .choice()
                        .player()
                        .ifPresent(p -> correcting.accept(new Correction.ChangeMoved(p, mark.timeS(), within)));
            case BEAT ->
                reviewing.judged().ifPresent(j -> {
                    Beat beat = j.table().beats().beats().get(mark.index());
                    correcting.accept(new Correction.BeatMoved(beat.bar(), beat.beat(), mark.timeS(), within));
                });
        }
    }
}
