package tuttarco.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import tuttarco.beats.Beat;
import tuttarco.chart.BarRun;
import tuttarco.chart.BowMotion;
import tuttarco.chart.Chart;
import tuttarco.chart.ChartFiles;
import tuttarco.chart.SectionByBeat;
import tuttarco.chart.Words;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Verdict;
import tuttarco.seats.Player;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.Bowing;

/** Finds the words for a take's page. */
public final class ReportWords {
    /** A piece of the widest chart this high, pixels, fits on A4 and on Letter with its words (measured in Chromium). */
    private static final int PIECE_PX = 1300;

    /** Seconds that all players together play up to which the page shows how each bow travelled: about 5 MB (measured on made takes). */
    private static final double MOST_CURVES_S = 7200;

    private final AnalysedTake take;
    private final Comparison comparison;
    private final Against reference;
    private final String other;
    private final boolean free;
    private final String unit;
    private final SpotWords spots;
    private final SharingWords sharing;

    ReportWords(AnalysedTake take) {
        this.take = take;
        this.comparison = take.comparison();
        this.reference = take.reference();
        this.other = reference == Against.MARKING ? "the marking" : "the leader";
        this.free = take.take().bowing() == Bowing.FREE;
        this.unit = Words.unit(comparison.beats());
        this.spots = new SpotWords(comparison);
        this.sharing = new SharingWords(take.together().sharing(), comparison.beats());
    }

    /** What a take came to, in a few sentences: what was read, where to work first, and how sure that is. */
    public static List<String> inShort(AnalysedTake take) {
        ReportWords words = new ReportWords(take);
        ReportModel.Sureness sure = words.sureness();
        List<String> sentences = new ArrayList<>();
        sentences.add(words.analysed());
        sentences.addAll(words.summary());
        sentences.add("Of all " + sure.counted() + " of all players " + sure.sure() + " are read for sure, "
                + sure.unsure() + " are unsure and " + sure.unseen() + " not seen"
                + sure.byHand()
                        .map(share -> "; " + share + " were set by hand.")
                        .orElse("."));
        return sentences;
    }

    /** What is told where there is no spot to rehearse: what was not found, and what could not have been. */
    public static String noSpots(AnalysedTake take) {
        ReportWords words = new ReportWords(take);
        List<String> sentences = new ArrayList<>();
        sentences.add(words.judged() == 0 ? words.nothingCompared() : words.noneApart());
        sentences.addAll(words.unsaid());
        return String.join(" ", sentences);
    }

    private String nothingCompared() {
        return "No " + unit + " could be compared with " + other + ".";
    }

    private String noneApart() {
        return "No stretch apart from " + other + " was found.";
    }

    ReportModel model(MomentPictures pictures, Optional<String> video) {
        TogetherWords together = new TogetherWords(take.together(), comparison);
        return new ReportModel(
                new ReportModel.Head(take.take().title(), PageStyle.moving(), free, other),
                take.notes(),
                analysed(),
                summary(),
                new ReportModel.Rehearse(
                        free,
                        judged() > 0,
                        spots.inOrder().stream()
                                .map(s -> new ReportModel.SeenSpot(
                                        s, pictures.at(s.moment().firstBeat())))
                                .toList(),
                        free ? List.of() : spots.candidates(),
                        unsaid()),
                TakeCharts.byBeat(take).stream().map(ReportWords::strip).toList(),
                TakeCharts.bowing(take).map(ReportWords::figure),
                new ReportModel.Bars(
                        TakeCharts.byBar(take).map(ReportWords::figure).stream().toList(), together.byBar()),
                late(),
                sharing(),
                findings(
                        List.of(UnityWords.of(take.unity(), unit)),
                        TakeCharts.asOne(take).stream().toList()),
                together.together(),
                take.evenness().map(EvennessWords::of).orElse(List.of()),
                curvesShown()
                        ? BowMotion.HELP
                        : "So many play for so long that the curves of their bows are not on this page; they lie beside it in"
                                + " the folder charts.",
                comparison.players().stream().map(this::player).toList(),
                moments(pictures),
                video,
                sureness(),
                facts());
    }

    private List<ReportModel.Moment> moments(MomentPictures pictures) {
        List<ReportModel.Moment> moments = new ArrayList<>();
        for (BarRun bar : BarRun.of(comparison.beats())) {
            Beat first = comparison.beats().beats().get(bar.firstIndex());
            moments.add(new ReportModel.Moment(
                    moments.size(),
                    (first.inBar() ? "Bar " : "From the leader's stroke ") + bar.bar(),
                    Words.clock(first.timeS()),
                    pictures.at(bar.firstIndex())));
        }
        return moments;
    }

    private static ReportModel.Strip strip(SectionByBeat chart) {
        return new ReportModel.Strip(
                chart.key(), Words.plain(chart.title()), chart.help(), chart.strip(), chart.table());
    }

    /** Where everybody may change when he or she likes, nobody is late. */
    private ReportModel.Findings late() {
        return findings(
                free
                        ? List.of(
                                "This take was meant to be bowed freely: that changes fall apart is wanted, and nobody is"
                                        + " called late or early.")
                        : new LateWords(take.together().timing()).sentences(),
                TakeCharts.ofTiming(take));
    }

    /** Where everybody may take the bow he or she likes, nobody is compared. */
    private ReportModel.Findings sharing() {
        return findings(
                free
                        ? List.of(
                                "This take was meant to be bowed freely: how much bow each takes, and where, is his or her own"
                                        + " choice, and nobody is compared with the leader.")
                        : sharing.sentences(),
                TakeCharts.ofSharing(take));
    }

    private static ReportModel.Findings findings(List<String> sentences, List<? extends Chart> charts) {
        return new ReportModel.Findings(
                sentences, charts.stream().map(ReportWords::figure).toList());
    }

    /** Who played what, in a sentence. */
    private String analysed() {
        String meant = free ? "meant to be bowed freely" : "meant to be bowed alike";
        return Words.count(comparison.players().size(), "player") + " over " + length() + ", "
                + Words.clock(take.endS()) + " of video, " + meant + ".";
    }

    /** Three sentences at most. */
    private List<String> summary() {
        long judged = judged();
        if (judged == 0) {
            return List.of(
                    nothingCompared(), "So this take shows neither that the section was together nor that it was not.");
        }
        long with = count(verdicts(Verdict.WITH));
        String how = "Of " + Words.count(judged, unit) + " of all players that could be judged, " + with + " ("
                + Words.percent((double) with / judged) + ") went with " + other + ".";
        String where = spots.first()
                .map(s -> (free ? "The largest stretch apart: " : "Rehearse first: ") + s + ".")
                .orElse(noneApart());
        return List.of(how, where, UnityWords.of(take.unity(), unit));
    }

    /** What can't be told from this take, whatever was played. */
    private List<String> unsaid() {
        List<String> unsaid = new ArrayList<>();
        if (reference == Against.LEADER) {
            unsaid.add("Nothing is marked, so nothing can be said of the marking.");
        }
        if (comparison.players().stream().noneMatch(Player::leader)) {
            unsaid.add("Nobody leads in this take, so nothing can be said of going with the leader.");
        }
        if (comparison.players().size() == 1) {
            unsaid.add("One player alone shows nothing of how together a section is.");
        }
        return unsaid;
    }

    private String length() {
        int stops = comparison.beats().runs().size() - 1;
        String stopped = stops == 0 ? "" : " with " + Words.count(stops, "stop");
        return comparison.beats().inBars()
                ? Words.count(BarRun.of(comparison.beats()).size(), "bar") + stopped
                : Words.count(comparison.beats().beats().size(), "stroke") + " of the leader";
    }

    private long judged() {
        return count(verdicts(Verdict.WITH)) + count(verdicts(Verdict.AGAINST));
    }

    private Predicate<BeatReading> verdicts(Verdict verdict) {
        return r -> verdict(r) == verdict;
    }

    private Verdict verdict(BeatReading reading) {
        return reference == Against.MARKING ? reading.verdict() : reading.leaderVerdict();
    }

    private long count(Predicate<BeatReading> which) {
        return comparison.beatReadings().stream()
                .flatMap(List::stream)
                .filter(which)
                .count();
    }

    static ReportModel.Figure figure(Chart chart) {
        return new ReportModel.Figure(
                chart.key(),
                Words.plain(chart.title()),
                chart.help(),
                ChartFiles.pieces(chart, PIECE_PX),
                chart.table());
    }

    private ReportModel.PlayerPart player(Player player) {
        int index = comparison.players().indexOf(player);
        String seat = "Desk " + player.desk() + ", " + player.place().word() + ", "
                + player.instrument().word() + (player.leader() ? "; leads the section" : "");
        return new ReportModel.PlayerPart(
                "player-" + (index + 1),
                player.label(),
                seat,
                sentences(player, comparison.beatReadings().get(index)),
                spots.of(player, reference),
                curvesShown() ? TakeCharts.ofPlayer(take, player).map(ReportWords::figure) : Optional.empty());
    }

    private boolean curvesShown() {
        return comparison.players().size() * take.endS() <= MOST_CURVES_S;
    }

    private List<String> sentences(Player player, List<BeatReading> readings) {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        readings.forEach(r -> counts.merge(verdict(r), 1, Integer::sum));
        int with = counts.getOrDefault(Verdict.WITH, 0);
        int judged = with + counts.getOrDefault(Verdict.AGAINST, 0);
        List<String> sentences = new ArrayList<>();
        if (reference == Against.LEADER && player.leader()) {
            sentences.add("The others are compared with this player.");
        } else if (judged == 0) {
            sentences.add("No " + unit + " could be compared with " + other + ".");
        } else {
            sentences.add("With " + other + " on " + with + " of " + Words.count(judged, "judged " + unit) + ".");
        }
        if (judged > 0 && judged < Comparison.LEAST_JUDGED_BEATS) {
            sentences.add("That is too little to say whether this player was turned.");
        }
        int unsure = counts.getOrDefault(Verdict.UNSURE, 0);
        int unseen = counts.getOrDefault(Verdict.UNSEEN, 0);
        if (unsure + unseen > 0) {
            String both = unsure > 0 && unseen > 0 ? ", " : "";
            sentences.add("Not judged: " + (unsure > 0 ? Words.count(unsure, unit) + " unsure" : "") + both
                    + (unseen > 0 ? Words.count(unseen, unit) + " not seen" : "") + ".");
        }
        byHandWords(readings).ifPresent(sentences::add);
        if (!free) {
            new LateWords(take.together().timing()).of(player).ifPresent(sentences::add);
        }
        take.bows().stream()
                .filter(b -> b.player().equals(player))
                .flatMap(b -> BowWords.of(b).stream())
                .forEach(sentences::add);
        if (!free) {
            sentences.addAll(sharing.of(player));
        }
        return sentences;
    }

    private Optional<String> byHandWords(List<BeatReading> readings) {
        long byHand = readings.stream().filter(ReportWords::byHand).count();
        long absent =
                readings.stream().filter(r -> r.played() == StrokeKind.ABSENT).count();
        List<String> words = new ArrayList<>();
        if (byHand > absent) {
            words.add(Words.count(byHand - absent, unit) + " set by hand");
        }
        if (absent > 0) {
            words.add("not there on " + Words.count(absent, unit));
        }
        return words.isEmpty() ? Optional.empty() : Optional.of("As somebody said: " + String.join(", ", words) + ".");
    }

    private static boolean byHand(BeatReading reading) {
        return reading.source() == Stroke.Source.BY_HAND;
    }

    /** What somebody set is no success of the program's, nor is it in doubt. */
    private ReportModel.Sureness sureness() {
        long all = count(r -> true);
        long byHand = count(ReportWords::byHand);
        long unsure = count(r -> !byHand(r) && r.played() == StrokeKind.UNSURE);
        long unseen = count(r -> !byHand(r) && r.played() == StrokeKind.UNSEEN);
        return new ReportModel.Sureness(
                unit + "s",
                share(all - byHand - unsure - unseen, all),
                share(unsure, all),
                share(unseen, all),
                byHand == 0 ? Optional.empty() : Optional.of(share(byHand, all)));
    }

    private static String share(long part, long all) {
        return all == 0 ? Words.percent(0) : Words.percent((double) part / all);
    }

    private ReportModel.Facts facts() {
        List<ReportModel.Fact> inputs = new ArrayList<>();
        fileName("take", Optional.of(take.take().file()), inputs);
        fileName("video", Optional.of(take.take().video()), inputs);
        fileName("part", take.take().part(), inputs);
        String picture = take.clip().widthPx() + " x " + take.clip().heightPx() + " px";
        inputs.add(new ReportModel.Fact("picture", picture));
        new TreeMap<>(take.sha256())
                .forEach((role, hash) -> inputs.add(new ReportModel.Fact("SHA-256 of the " + role, hash)));
        List<ReportModel.Fact> settings = new ArrayList<>();
        new TreeMap<>(take.settings()).forEach((name, value) -> settings.add(new ReportModel.Fact(name, value)));
        return new ReportModel.Facts(take.programVersion(), inputs, settings);
    }

    private static void fileName(String role, Optional<Path> file, List<ReportModel.Fact> into) {
        file.map(Path::getFileName).ifPresent(name -> into.add(new ReportModel.Fact(role, name.toString())));
    }
}
