package tuttarco.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.chart.BarRun;
import tuttarco.chart.Cell;
import tuttarco.chart.PlayedBars;
import tuttarco.chart.SignKey;
import tuttarco.chart.SignSample;
import tuttarco.chart.Words;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Departure;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Spot;
import tuttarco.compare.Verdict;
import tuttarco.seats.Player;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.Bowing;

/**
 * What a sheet tells its player. A child of ten may read it, and its parents: what went well comes first, a reading is a hint
 * and no verdict, nobody is ranked, and nobody else is named but the leader, as the leader.
 */
final class SheetWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    /** Who is back after no more beats than a bar of common time holds was back soon (chosen). */
    private static final int SOON_BEATS = 4;

    private static final List<String> CARE = List.of(
            "A computer looked at a film of your bow arm. It can't hear you, and it can be wrong: a reading is a hint and no "
                    + "verdict, and it does not tell how well you play. If something looks wrong to you, you may well be "
                    + "right: ask your teacher.");

    private final AnalysedTake take;
    private final Player player;
    private final PlayerBeats beats;
    private final SheetPlaces places;
    private final boolean free;
    private final boolean marking;

    SheetWords(AnalysedTake take, Player player) {
        this.take = take;
        this.player = player;
        this.beats = new PlayerBeats(take.comparison(), take.reference(), player);
        this.places = new SheetPlaces(beats);
        this.free = take.take().bowing() == Bowing.FREE;
        this.marking = take.reference() == Against.MARKING;
    }

    SheetModel model() {
        List<SheetModel.Section> sections = new ArrayList<>();
        if (free) {
            sections.add(freely());
        } else {
            sections.add(well());
            sections.add(places.section());
            sections.add(new SheetModel.Section("timing", "Your timing", timing().said(player.leader())));
        }
        sections.add(new SheetModel.Section("unseen", "What the film could not show", doubt()));
        return new SheetModel(head(), sections, signs(sections), CARE);
    }

    private SheetTiming timing() {
        return new SheetTiming(take.together().timing(), player);
    }

    private SheetModel.Head head() {
        String day = take.take().day().map(d -> ", " + d.format(DAY)).orElse("");
        String seat = "desk " + player.desk() + " " + player.place().word();
        String instrument = Words.capital(player.instrument().word());
        return new SheetModel.Head(
                Words.plain(take.take().title()) + day,
                Words.plain(player.label()),
                (player.label().toLowerCase(Locale.ROOT).startsWith(seat) ? instrument : instrument + ", " + seat)
                        + (player.leader() ? "; you lead the section" : ""),
                List.of(
                        free
                                ? "This was bowed freely on purpose: everybody may change bow when he or she likes, so that no "
                                        + "change is heard. So no way of bowing is right or wrong here."
                                : "This sheet shows which way your bow went, as far as a film could show it"
                                        + (marking
                                                ? ", beside what is marked in your part."
                                                : beats.leads()
                                                        ? ". You lead, and nothing is marked, so it stands beside nothing."
                                                        : ", beside what your leader did.")));
    }

    private SheetModel.Section well() {
        List<String> well = new ArrayList<>();
        with().ifPresent(well::add);
        backSoon().ifPresent(well::add);
        well.addAll(timing().well());
        if (well.isEmpty()) {
            well.add(bowing());
        }
        return new SheetModel.Section(
                "well", "What went well", well, places.spots().isEmpty() ? shown() : List.of(), Optional.empty());
    }

    private SheetModel.Section freely() {
        return new SheetModel.Section("free", "How your bow went", List.of(bowing()), shown(), Optional.empty());
    }

    /** Where the bow went as it should; nothing where too little was seen. */
    private Optional<String> with() {
        long with = beats.count(r -> beats.verdict(r) == Verdict.WITH);
        if (beats.judged() < Comparison.LEAST_JUDGED_BEATS || with == 0) {
            return Optional.empty();
        }
        if (with == beats.judged()) {
            return Optional.of("Wherever your bow could be read, it went " + other() + ": on all " + with + " "
                    + beats.unit() + "s.");
        }
        List<BarRun> stretches = longest(wellBars());
        return Optional.of(
                stretches.isEmpty()
                        ? "Your bow went " + other() + " on " + Words.count(with, beats.unit()) + "."
                        : "All through " + beats.named(stretches) + " your bow went " + other()
                                + ", as far as it could be read.");
    }

    private String other() {
        return marking ? "as marked" : "with your leader's";
    }

    /** Bars with the reference throughout, of which at least half could be judged. */
    private List<BarRun> wellBars() {
        return beats.stretches(bar -> {
            long meant = bar.stream().filter(beats::meant).count();
            long judged = bar.stream().filter(beats::judged).count();
            return judged > 0
                    && 2 * judged >= meant
                    && bar.stream().noneMatch(r -> beats.verdict(r) == Verdict.AGAINST);
        });
    }

    private static List<BarRun> longest(List<BarRun> stretches) {
        return stretches.stream()
                .sorted(Comparator.comparingInt(BarRun::beatCount).reversed())
                .limit(SheetPlaces.MOST)
                .sorted(Comparator.comparingInt(BarRun::firstIndex))
                .toList();
    }

    /** The quickest way back from a stretch apart, if it was quick. */
    private Optional<String> backSoon() {
        return places.spots().stream()
                .filter(s -> SheetPlaces.departure(s).back() instanceof Departure.BackAt)
                .filter(s -> SheetPlaces.departure(s).beatCount() <= SOON_BEATS)
                .min(Comparator.comparingInt(s -> SheetPlaces.departure(s).beatCount()))
                .map(this::backSoon);
    }

    private String backSoon(Spot spot) {
        return "When your bow had gone another way ("
                + take.comparison().beats().beats().get(spot.firstIndex()).spoken() + "), you were back after only "
                + Words.count(SheetPlaces.departure(spot).beatCount(), beats.unit()) + ".";
    }

    /** What can be said of any player who was seen. */
    private String bowing() {
        long meant = beats.count(beats::meant);
        long bowed = beats.count(r -> beats.meant(r) && beats.bowed(r));
        if (bowed < Comparison.LEAST_JUDGED_BEATS) {
            return "This time the film shows too little of your bow to say. That tells nothing about how you played.";
        }
        return "Your bow was seen moving on " + bowed + " of the " + meant + " " + beats.unit() + "s"
                + (marking ? " you had to play." : ".");
    }

    /** Some bars to see how the signs look, where there is no place to look at. */
    private List<SheetModel.Place> shown() {
        Optional<BarRun> best = (free || beats.leads()
                        ? beats.stretches(bar -> bar.stream().anyMatch(beats::bowed))
                        : wellBars())
                .stream().max(Comparator.comparingInt(BarRun::beatCount));
        return best
                .map(bars -> {
                    PlayedBars picture = free
                            ? PlayedBars.free(
                                    "bars", take.comparison(), marking, player, bars.firstIndex(), bars.lastIndex())
                            : PlayedBars.beside(
                                    "bars",
                                    take.comparison(),
                                    take.reference(),
                                    player,
                                    bars.firstIndex(),
                                    bars.lastIndex());
                    return new SheetModel.Place(
                            picture.where(),
                            Words.clock(take.comparison()
                                    .beats()
                                    .beats()
                                    .get(bars.firstIndex())
                                    .timeS()),
                            List.of("Here is how your bow went"
                                    + (picture.whole() ? "." : " in the first of these bars.")),
                            picture);
                })
                .stream()
                .toList();
    }

    private List<String> doubt() {
        List<String> doubt = new ArrayList<>();
        long unseen = beats.count(beats::unseen);
        long unsure = beats.count(beats::unsure);
        if (unseen > 0) {
            doubt.add("Not seen: " + Words.count(unseen, beats.unit()) + ", in "
                    + beats.named(beats.stretches(bar -> bar.stream().anyMatch(beats::unseen)))
                    + ". An arm behind a stand or a neighbour can't be seen.");
        }
        if (unsure > 0) {
            doubt.add("Seen, but not surely enough: " + Words.count(unsure, beats.unit()) + ", in "
                    + beats.named(beats.stretches(bar -> bar.stream().anyMatch(beats::unsure))) + ".");
        }
        single().ifPresent(doubt::add);
        byHand().forEach(doubt::add);
        return doubt.isEmpty() ? List.of("Nothing: all of your " + beats.unit() + "s could be read.") : doubt;
    }

    /** Beats that looked otherwise but make no stretch. */
    private Optional<String> single() {
        long single = free ? 0 : beats.count(r -> beats.verdict(r) == Verdict.AGAINST && !inASpot(r));
        return single == 0
                ? Optional.empty()
                : Optional.of("On " + Words.count(single, beats.unit())
                        + " your bow looked otherwise for a moment. That is easily misread, so it is not counted.");
    }

    private boolean inASpot(BeatReading reading) {
        return places.spots().stream()
                .anyMatch(s -> s.firstIndex() <= reading.beatIndex() && reading.beatIndex() <= s.lastIndex());
    }

    private List<String> byHand() {
        long absent = beats.count(r -> r.played() == StrokeKind.ABSENT);
        long set = beats.count(PlayerBeats::byHand) - absent;
        List<String> said = new ArrayList<>();
        if (set > 0) {
            said.add("On " + Words.count(set, beats.unit())
                    + " the computer's reading was set right by a person who looked at the film.");
        }
        if (absent > 0) {
            said.add("On " + Words.count(absent, beats.unit()) + " you were not there, as somebody noted.");
        }
        return said;
    }

    private List<SignSample> signs(List<SheetModel.Section> sections) {
        List<Cell> cells = sections.stream()
                .flatMap(s -> s.places().stream())
                .flatMap(p -> p.picture().cells().stream())
                .toList();
        if (cells.isEmpty()) {
            return List.of();
        }
        boolean viol = player.instrument() == Instrument.VIOL;
        List<SignKey> keys = new ArrayList<>();
        keys.add(new SignKey(
                List.of(new Cell(Cell.State.SHOWN, Optional.of(BowDirection.DOWN))),
                viol ? "pull (down)" : "down-bow"));
        keys.add(new SignKey(
                List.of(new Cell(Cell.State.SHOWN, Optional.of(BowDirection.UP))), viol ? "push (up)" : "up-bow"));
        Stream.of(
                        new SignKey(
                                List.of(new Cell(Cell.State.AGAINST, Optional.of(BowDirection.UP))),
                                marking ? "other way than marked" : "other way than your leader"),
                        new SignKey(List.of(new Cell(Cell.State.UNSURE, Optional.of(BowDirection.UP))), "not sure"),
                        new SignKey(List.of(new Cell(Cell.State.UNSEEN, Optional.empty())), "not seen"),
                        new SignKey(List.of(new Cell(Cell.State.ABSENT, Optional.empty())), "not there"))
                .filter(key -> cells.stream()
                        .anyMatch(c -> c.state() == key.cells().get(0).state()))
                .forEach(keys::add);
        if (cells.stream().anyMatch(Cell::byHand)) {
            keys.add(new SignKey(
                    List.of(new Cell(Cell.State.SHOWN, Optional.of(BowDirection.UP), Stroke.Source.BY_HAND)),
                    "set right by a person"));
        }
        List<SignSample> samples = new ArrayList<>();
        keys.forEach(key -> samples.add(new SignSample("sign-" + (samples.size() + 1), key)));
        return samples;
    }
}
