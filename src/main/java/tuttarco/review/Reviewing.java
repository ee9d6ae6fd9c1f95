package tuttarco.review;

import java.util.Optional;
import tuttarco.chart.BarRun;
import tuttarco.report.AnalysedTake;

/**
 * Reviews what was read: one choice, of player, time and beats, for the picture, the section by beat, the rehearsal list and
 * the bow's curve. Time and player are the session's. It belongs to the window's thread.
 */
public final class Reviewing {
    private final Session session;
    private Optional<Judged> judged = Optional.empty();
    private ChosenBeats beats = ChosenBeats.one(0);
    private Optional<BowLine> bow = Optional.empty();
    private Optional<Asked> asked = Optional.empty();
    private final Listeners onChange = new Listeners();

    /** Whose bow is to be shown, and of which judgement. */
    private record Asked(Judged of, String player) {}

    public Reviewing(Session session) {
        this.session = session;
        session.onAnalysed().add(this::analysed);
        session.onChoice().add(this::followed);
    }

    /** What there is to review; empty until the take is read. */
    public Optional<Judged> judged() {
        return judged;
    }

    /** What must be done before there is something to review; empty if nothing. */
    public Optional<TakeReading.State.NotYet> first() {
        return first(session);
    }

    static Optional<TakeReading.State.NotYet> first(Session session) {
        return session.analysed().isPresent()
                ? Optional.empty()
                : TakeReading.missing(session.draft())
                        .or(() -> Optional.of(new TakeReading.State.NotYet(
                                "The bows of this take are not read yet; read them first.", "reading")));
    }

    /** The beats chosen; of no meaning while there is nothing to review. */
    public ChosenBeats beats() {
        return beats;
    }

    /** The chosen player's bow; empty until it is there. */
    public Optional<BowLine> bow() {
        return bow;
    }

    public Choice choice() {
        return session.choice();
    }

    /** Told when the choice changes, or what there is to choose from. */
    public Listeners onChange() {
        return onChange;
    }

    private void analysed() {
        Optional<AnalysedTake> take = session.analysed();
        if (take.isEmpty()) {
            judged = Optional.empty();
            beats = ChosenBeats.one(0);
            tell();
            return;
        }
        session.background().run(() -> Judged.of(take.get()), seen -> show(take.get(), seen), session::trouble);
    }

    /** Shows it, unless the take has changed since. */
    private void show(AnalysedTake of, Judged seen) {
        if (session.analysed().filter(now -> now == of).isEmpty()) {
            return;
        }
        judged = Optional.of(seen);
        SectionTable table = seen.table();
        beats = new ChosenBeats(table.moved(beats.anchor(), 0), table.moved(beats.at(), 0))
                .following(table.beatNear(choice().timeS()));
        boolean known = choice().player().flatMap(table::rowOf).isPresent();
        if (known) {
            tell();
        } else {
            choosePlayer(table.players().get(0).label());
        }
    }

    private void followed() {
        judged.ifPresent(j -> beats = beats.following(j.table().beatNear(choice().timeS())));
        tell();
    }

    private void tell() {
        Optional<Asked> now = judged.flatMap(j -> choice().player().map(p -> new Asked(j, p)));
        if (!same(now, asked)) {
            asked = now;
            bow = Optional.empty();
            now.ifPresent(a -> session.background()
                    .run(() -> BowLine.of(a.of().take(), a.player()), line -> show(a, line), session::trouble));
        }
        onChange.tell();
    }

    /** Judgements are told apart by what they are, not by all they hold. */
    private static boolean same(Optional<Asked> one, Optional<Asked> other) {
        return one.map(Asked::player).equals(other.map(Asked::player))
                && one.map(Asked::of).orElse(null) == other.map(Asked::of).orElse(null);
    }

    private void show(Asked of, Optional<BowLine> line) {
        if (asked.filter(a -> a == of).isPresent()) {
            bow = line;
            onChange.tell();
        }
    }

    public void choosePlayer(String label) {
        session.choose(choice().of(Optional.of(label)));
    }

    /** Goes to a time, seconds: the clip has come there, or somebody points at it. */
    public void chooseTime(double timeS) {
        session.choose(choice().at(timeS));
    }

    /**
     * Goes to a beat of a player's.
     *
     * @param player the player's label
     * @param further the beats from the anchor to this one are chosen together
     */
    public void chooseBeat(Optional<String> player, int beat, boolean further) {
        judged.ifPresent(j -> choose(j.table(), player, further ? beats.upTo(beat) : ChosenBeats.one(beat)));
    }

    /** Goes to the bar that holds a beat, all its beats chosen. */
    public void chooseBar(int beat) {
        judged.ifPresent(j -> {
            BarRun bar = j.table().bars().get(j.table().barOf(beat));
            choose(j.table(), choice().player(), new ChosenBeats(bar.lastIndex(), bar.firstIndex()));
        });
    }

    /** Goes so many beats on, or back if negative. */
    public void moveBeats(int by, boolean further) {
        judged.ifPresent(j -> move(j.table(), j.table().moved(beats.at(), by), further));
    }

    /** Goes so many bars on, or back if negative. */
    public void moveBars(int by, boolean further) {
        judged.ifPresent(j -> move(j.table(), j.table().movedBars(beats.at(), by), further));
    }

    /** Goes so many players down, or up if negative. */
    public void movePlayers(int by) {
        judged.ifPresent(
                j -> choosePlayer(j.table().movedRows(choice().player(), by).label()));
    }

    /** Goes to a spot: its first beat, its first player if it is about some, all its beats chosen. */
    public void chooseSpot(Judged.ToRehearse spot) {
        judged.ifPresent(j -> choose(
                j.table(),
                spot.player().or(() -> choice().player()),
                new ChosenBeats(spot.lastIndex(), spot.firstIndex())));
    }

    /** When the chosen beats sound; empty while there is nothing to review. */
    public Optional<Stretch> stretch() {
        return judged.map(j -> j.table().stretch(beats));
    }

    /** When the bars sound in which the chosen beats lie. */
    public Optional<Stretch> bars() {
        return judged.map(j -> j.table().barsOf(beats));
    }

    private void move(SectionTable table, int beat, boolean further) {
        choose(table, choice().player(), further ? beats.upTo(beat) : ChosenBeats.one(beat));
    }

    private void choose(SectionTable table, Optional<String> player, ChosenBeats chosen) {
        beats = chosen;
        Choice next = new Choice(player, table.beats().beats().get(chosen.at()).timeS());
        if (next.equals(choice())) {
            tell();
        } else {
            session.choose(next);
        }
    }
}
