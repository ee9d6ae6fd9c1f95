package tuttarco.review;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import tuttarco.analysis.SeatSearch;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.seats.Facing;
import tuttarco.seats.LeaderSide;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.Proposal;
import tuttarco.seats.SeatBox;
import tuttarco.video.ClipFacts;
import tuttarco.video.ClipPictures;

/** Setting up who sits where: a still of the clip, seats on it, and one of them chosen. It belongs to the window's thread. */
public final class SeatsModel {
    /** A seat drawn by key where there is no other to go by, as a share of the picture's width and height. */
    private static final double FIRST_SEAT = 0.2;

    /** Seats drawn by key one after the other lie so far apart that each is seen. */
    private static final int APART_PX = SeatRoom.LEAST_PX;

    private final Session session;
    private final Listeners onChange = new Listeners();
    private final Past<Seats> past = new Past<>();
    private Optional<Path> file = Optional.empty();
    private Seats seats = new Seats(List.of(), List.of());
    private Pick pick = new Pick.Nobody();
    private boolean nudging;
    private Instrument instrument = Instrument.VIOLIN;
    private LeaderSide side = LeaderSide.LEFT;
    private Optional<Still> still = Optional.empty();
    private double wantedS;
    private Background.Going looking = new Background.Going();
    private boolean looks;
    private Optional<Double> searched = Optional.empty();
    private Background.Going searching = new Background.Going();
    private Optional<List<Integer>> numbering = Optional.empty();

    public SeatsModel(Session session) {
        this.session = session;
        session.onDraft().add(this::draftChanged);
    }

    /** Which seat is chosen. */
    public sealed interface Pick {
        record Nobody() implements Pick {}

        /** A player, counted from 0 as in {@link Seats#players}. */
        record Sitting(int index) implements Pick {}

        /** One who may be a player, counted from 0 as in {@link Seats#doubtful}. */
        record Doubt(int index) implements Pick {}
    }

    /** A picture of the clip. */
    public record Still(ClipFacts facts, double timeS, BufferedImage picture) {
        public SeatRoom room() {
            return new SeatRoom(facts.widthPx(), facts.heightPx());
        }
    }

    private void draftChanged() {
        Optional<Draft> draft = session.draft();
        boolean other = !draft.map(Draft::file).equals(file);
        List<Player> players = draft.map(Draft::players).orElse(List.of());
        if (other) {
            searching.stop();
            searched = Optional.empty();
            still = Optional.empty();
            looking.stop();
            looks = false;
            wantedS = 0;
        }
        if (other || !players.equals(seats.players())) {
            file = draft.map(Draft::file);
            seats = new Seats(players, List.of());
            past.clear();
            pick = new Pick.Nobody();
            numbering = Optional.empty();
            players.stream().findFirst().ifPresent(p -> instrument = p.instrument());
        }
        onChange.tell();
    }

    // the picture

    public Optional<Still> still() {
        return still;
    }

    /** Seconds of the clip whose picture was asked for last. */
    public double wantedS() {
        return wantedS;
    }

    /** Has a still of the clip shown if none is yet. */
    public void look() {
        if (still.isEmpty()) {
            look(wantedS);
        }
    }

    /** Has the clip shown at another time, seconds; of times asked for while one is looked up only the last is. */
    public void look(double timeS) {
        wantedS = timeS;
        if (looks || session.draft().isEmpty()) {
            return;
        }
        looks = true;
        Path video = session.draft().get().video();
        looking = session.background().run(() -> stillOf(video, timeS), this::shown, why -> {
            looks = false;
            session.trouble(why);
        });
    }

    private static Still stillOf(Path video, double timeS) throws InputException {
        try (ClipPictures pictures = ClipPictures.open(video)) {
            return new Still(pictures.facts(), timeS, pictures.at(timeS));
        }
    }

    private void shown(Still shown) {
        looks = false;
        still = Optional.of(shown);
        onChange.tell();
        if (wantedS != shown.timeS()) {
            look(wantedS);
        }
    }

    // looking for the players

    /** How much of the clip was searched, 0 to 1, while that goes on. */
    public Optional<Double> searched() {
        return searched;
    }

    /** Looks for the players; what is found takes the place of the seats, which undoing brings back. */
    public void search() {
        if (session.draft().isEmpty() || searched.isPresent()) {
            return;
        }
        Path video = session.draft().get().video();
        searched = Optional.of(0.0);
        session.say("Looking for the players; you can go on meanwhile.");
        searching = session.background()
                .run(() -> SeatSearch.in(video, instrument, side, this::reached), found -> found(video, found), why -> {
                    searched = Optional.empty();
                    session.trouble(why);
                    onChange.tell();
                });
        onChange.tell();
    }

    private void reached(double clipTimeS, double lengthS) {
        session.background().tell(() -> {
            searched = searched.map(before -> lengthS > 0 ? Math.min(1, clipTimeS / lengthS) : before);
            onChange.tell();
        });
    }

    private void found(Path video, Proposal found) {
        searched = Optional.empty();
        if (found.players().isEmpty() && found.unsure().isEmpty()) {
            session.trouble(SeatSearch.nobody(video, found));
            onChange.tell();
            return;
        }
        propose(found);
    }

    /** Takes what was found in place of the seats. */
    void propose(Proposal found) {
        change(new Seats(found.players(), found.unsure()), Optional.empty());
        session.say(told(found));
    }

    private static String told(Proposal found) {
        int unsure = found.unsure().size();
        String doubts = unsure == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        " %d more may bow or not: click those who play, or choose them and press Enter.",
                        unsure);
        return String.format(
                Locale.ROOT,
                "%s found. Check the leader and the desks.%s",
                count(found.players().size()),
                doubts);
    }

    private static String count(int players) {
        return players == 1 ? "1 player" : players + " players";
    }

    public void stopSearch() {
        searching.stop();
        searched = Optional.empty();
        session.say("Looking for the players was stopped; the seats are as they were.");
        onChange.tell();
    }

    // what all have in common

    public Instrument instrument() {
        return instrument;
    }

    /** What all play, those who are here and those to come. */
    public void allPlay(Instrument other) {
        instrument = other;
        change(seats.withInstrument(other), chosenSeat());
    }

    public LeaderSide side() {
        return side;
    }

    public void leaderSits(LeaderSide other) {
        side = other;
        onChange.tell();
    }

    // choosing

    public Seats seats() {
        return seats;
    }

    public Pick pick() {
        return pick;
    }

    public void choose(Pick other) {
        if (!other.equals(pick)) {
            pick = other;
            nudging = false;
            onChange.tell();
        }
    }

    /** The next seat or the one before, players first; nobody at the end. */
    public void chooseNext(int step) {
        int players = seats.players().size();
        int all = players + seats.doubtful().size();
        int none = step > 0 ? -1 : all;
        int now =
                pick instanceof Pick.Sitting s ? s.index() : pick instanceof Pick.Doubt d ? players + d.index() : none;
        int next = now + step;
        choose(
                next < 0 || next >= all
                        ? new Pick.Nobody()
                        : next < players ? new Pick.Sitting(next) : new Pick.Doubt(next - players));
    }

    public OptionalInt chosenPlayer() {
        return pick instanceof Pick.Sitting s ? OptionalInt.of(s.index()) : OptionalInt.empty();
    }

    public Optional<SeatBox> chosenSeat() {
        if (pick instanceof Pick.Sitting sitting) {
            return Optional.of(seats.players().get(sitting.index()).seat());
        }
        return pick instanceof Pick.Doubt doubt ? Optional.of(seats.doubtful().get(doubt.index())) : Optional.empty();
    }

    /** The seat at a point of the picture; where several are, the chosen one, or else that whose middle is nearest. */
    public Pick at(double xPx, double yPx) {
        if (chosenSeat().filter(s -> holds(s, xPx, yPx)).isPresent()) {
            return pick;
        }
        Pick nearest = new Pick.Nobody();
        double leastPx = Double.POSITIVE_INFINITY;
        for (int i = 0; i < seats.players().size() + seats.doubtful().size(); i++) {
            int doubt = i - seats.players().size();
            SeatBox seat =
                    doubt < 0 ? seats.players().get(i).seat() : seats.doubtful().get(doubt);
            double awayPx =
                    Math.hypot(xPx - seat.xPx() - seat.widthPx() / 2.0, yPx - seat.yPx() - seat.heightPx() / 2.0);
            if (holds(seat, xPx, yPx) && awayPx < leastPx) {
                leastPx = awayPx;
                nearest = doubt < 0 ? new Pick.Sitting(i) : new Pick.Doubt(doubt);
            }
        }
        return nearest;
    }

    private static boolean holds(SeatBox seat, double xPx, double yPx) {
        return xPx >= seat.xPx()
                && yPx >= seat.yPx()
                && xPx < seat.xPx() + seat.widthPx()
                && yPx < seat.yPx() + seat.heightPx();
    }

    // changing

    /** Moves the chosen player's seat a little; steps that follow each other are undone at once. */
    public void nudge(int acrossPx, int downPx) {
        nudge(seat -> room().map(r -> r.moved(seat, acrossPx, downPx)));
    }

    /** Makes the chosen player's seat larger or smaller at its right lower corner; as {@link #nudge(int, int)}. */
    public void grow(int acrossPx, int downPx) {
        nudge(seat -> room().map(r -> r.resized(seat, SeatRoom.Handle.BOTTOM_RIGHT, acrossPx, downPx)));
    }

    private void nudge(Function<SeatBox, Optional<SeatBox>> way) {
        chosenPlayer()
                .ifPresent(i -> way.apply(seats.players().get(i).seat()).ifPresent(seat -> {
                    boolean goesOn = nudging;
                    if (goesOn) {
                        put(seats.withSeat(i, seat), Optional.of(seat));
                    } else {
                        change(seats.withSeat(i, seat), Optional.of(seat));
                    }
                    nudging = true;
                }));
    }

    /** Puts the chosen player's seat elsewhere. */
    public void place(SeatBox seat) {
        chosenPlayer().ifPresent(i -> change(seats.withSeat(i, seat), Optional.of(seat)));
    }

    /** One more player at this seat. */
    public void add(SeatBox seat) {
        change(seats.added(seat, instrument), Optional.of(seat));
        session.say("A player was added; the arrow keys move the seat, with Shift they resize it.");
    }

    /** One more player in the middle of the picture, with a seat as large as the others'. */
    public void add() {
        room().ifPresent(r -> {
            SeatBox seat = r.middle(
                    middle(SeatBox::widthPx, FIRST_SEAT * r.widthPx()),
                    middle(SeatBox::heightPx, FIRST_SEAT * r.heightPx()));
            while (isSomebodys(seat) && r.moved(seat, APART_PX, APART_PX).xPx() > seat.xPx()) {
                seat = r.moved(seat, APART_PX, APART_PX);
            }
            add(seat);
        });
    }

    private boolean isSomebodys(SeatBox seat) {
        return seats.players().stream().anyMatch(p -> p.seat().equals(seat));
    }

    private int middle(Function<SeatBox, Integer> side, double otherwise) {
        List<Integer> sorted =
                seats.players().stream().map(Player::seat).map(side).sorted().toList();
        return sorted.isEmpty() ? (int) Math.round(otherwise) : sorted.get(sorted.size() / 2);
    }

    /** Takes the chosen seat away, of a player or of one who may be one. */
    public void remove() {
        if (pick instanceof Pick.Sitting sitting) {
            Player gone = seats.players().get(sitting.index());
            change(seats.without(sitting.index()), Optional.empty());
            session.say(Plain.text(gone.label()) + " was taken away; undo brings him or her back.");
        } else if (pick instanceof Pick.Doubt doubt) {
            change(seats.withoutDoubt(doubt.index()), Optional.empty());
        }
    }

    /** Whoever is chosen and may be a player is one. */
    public void takeChosen() {
        if (pick instanceof Pick.Doubt doubt) {
            SeatBox seat = seats.doubtful().get(doubt.index());
            change(seats.taken(doubt.index(), instrument), Optional.of(seat));
        }
    }

    /** All who may be players are. */
    public void takeAll() {
        change(seats.allTaken(instrument), chosenSeat());
    }

    /** Names the chosen player; a name that can't be is told and not taken. */
    public void name(String label) {
        chosenPlayer().ifPresent(i -> {
            String trimmed = label.strip();
            boolean taken = IntStream.range(0, seats.players().size())
                    .anyMatch(j -> j != i && seats.players().get(j).label().equals(trimmed));
            if (taken) {
                session.trouble(Plain.text(trimmed) + " is somebody else's name here; give another.");
                onChange.tell();
            } else if (trimmed.isEmpty()
                    || trimmed.length() > Player.LONGEST_LABEL
                    || trimmed.chars().anyMatch(Character::isISOControl)) {
                session.trouble("A name has 1 to " + Player.LONGEST_LABEL + " letters; give another.");
                onChange.tell();
            } else {
                change(seats.named(i, trimmed), chosenSeat());
            }
        });
    }

    /** The chosen player leads, and nobody else does; or leads no longer. */
    public void lead(boolean leads) {
        chosenPlayer().ifPresent(i -> change(seats.led(i, leads), chosenSeat()));
    }

    public void plays(Instrument other) {
        chosenPlayer().ifPresent(i -> change(seats.withInstrument(i, other), chosenSeat()));
    }

    /** Where the chosen player's chest points, or empty if that is to be seen. */
    public void faces(Optional<Facing> facing) {
        chosenPlayer().ifPresent(i -> change(seats.facing(i, facing), chosenSeat()));
    }

    /** The chosen player sits there; whoever sat there takes the place that is left. */
    public void sits(int desk, Place place) {
        chosenPlayer().ifPresent(i -> change(seats.sitting(i, desk, place), chosenSeat()));
    }

    // numbering

    /** Numbers all by where they sit in the picture, the leader first. */
    public void numberByPlace() {
        change(seats.numberedByPlace(side), chosenSeat());
        session.say("The desks are numbered from the front, from the leader's side; undo brings the old ones back.");
    }

    /** Those who were clicked so far, while the players are numbered by clicking them in order. */
    public Optional<List<Integer>> numbering() {
        return numbering;
    }

    public void startNumbering() {
        numbering = Optional.of(List.of());
        session.say("Click the players in order: the leader, who sits beside, the next desk; Escape ends it.");
        onChange.tell();
    }

    /** The next one in the order; with the last the numbers count. */
    public void numberNext(int player) {
        numbering.filter(order -> !order.contains(player)).ifPresent(order -> {
            List<Integer> more = new ArrayList<>(order);
            more.add(player);
            numbering = Optional.of(List.copyOf(more));
            if (more.size() == seats.players().size()) {
                endNumbering();
            } else {
                onChange.tell();
            }
        });
    }

    /** Numbers those who were clicked, and after them the others as they were. */
    public void endNumbering() {
        List<Integer> order = numbering.orElse(List.of());
        numbering = Optional.empty();
        if (order.isEmpty()) {
            session.say("The numbers are as they were.");
            onChange.tell();
        } else {
            change(seats.numbered(order), chosenSeat());
            session.say(
                    count(order.size()) + " numbered in the order of your clicks; undo brings the old numbers back.");
        }
    }

    // back and forth

    public boolean canUndo() {
        return past.canGoBack();
    }

    public boolean canRedo() {
        return past.canGoForth();
    }

    public void undo() {
        past.back(seats).ifPresent(before -> restore(before, "Undone."));
    }

    public void redo() {
        past.forth(seats).ifPresent(after -> restore(after, "Done again."));
    }

    private void restore(Seats other, String told) {
        nudging = false;
        numbering = Optional.empty();
        boolean sameMany = other.players().size() == seats.players().size()
                && other.doubtful().size() == seats.doubtful().size();
        Pick before = pick;
        put(other, chosenSeat());
        if (sameMany) {
            choose(before);
        }
        session.say(told);
    }

    private void change(Seats changed, Optional<SeatBox> chosen) {
        nudging = false;
        if (changed.equals(seats)) {
            onChange.tell();
            return;
        }
        past.keep(seats);
        numbering = Optional.empty();
        put(changed, chosen);
    }

    private void put(Seats changed, Optional<SeatBox> chosen) {
        boolean others = !changed.players().equals(seats.players());
        seats = changed;
        pick = chosen.map(this::pickOf).orElse(new Pick.Nobody());
        if (others) {
            session.draft().ifPresent(d -> session.change(d.withPlayers(changed.players())));
        } else {
            onChange.tell();
        }
    }

    private Pick pickOf(SeatBox seat) {
        int player = seats.players().stream().map(Player::seat).toList().indexOf(seat);
        int doubt = seats.doubtful().indexOf(seat);
        return player >= 0 ? new Pick.Sitting(player) : doubt >= 0 ? new Pick.Doubt(doubt) : new Pick.Nobody();
    }

    private Optional<SeatRoom> room() {
        return still.map(Still::room);
    }

    /** What is not well with the seats, one sentence each; the worst first. */
    public List<String> troubles() {
        List<String> troubles = new ArrayList<>();
        List<Player> players = seats.players();
        if (session.draft().isEmpty()) {
            troubles.add("Open a video or a take first.");
        } else if (players.isEmpty()) {
            troubles.add("Nobody sits here yet: look for the players, or draw a seat around one.");
        } else if (players.stream().noneMatch(Player::leader)) {
            troubles.add("Nobody leads: choose the leader and press L.");
        }
        Set<String> places = new LinkedHashSet<>();
        for (Player p : players) {
            if (!places.add(p.desk() + " " + p.place().word())) {
                troubles.add("Two sit at desk " + p.desk() + " " + p.place().word() + "; number them by clicking.");
            }
        }
        List<String> small = players.stream()
                .filter(p -> p.seat().widthPx() < SeatRoom.SMALL_PX)
                .map(p -> Plain.text(p.label()))
                .toList();
        if (!small.isEmpty()) {
            troubles.add("So small that strokes are hardly seen: " + String.join(", ", small)
                    + ". Film from nearer, or make the seat as wide as both arms reach.");
        }
        return troubles;
    }

    /** For what takes a while to draw. */
    public Background background() {
        return session.background();
    }

    public Listeners onChange() {
        return onChange;
    }
}
