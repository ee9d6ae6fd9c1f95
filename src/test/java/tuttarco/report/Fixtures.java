package tuttarco.report;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tuttarco.chart.SectionFixture;
import tuttarco.compare.BarEvenness;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Evenness;
import tuttarco.compare.Togetherness;
import tuttarco.compare.UnityByShifts;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowPart;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Bows;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;
import tuttarco.video.ClipFacts;

/** Analysed takes made by hand from {@link SectionFixture}. */
public final class Fixtures {
    private Fixtures() {}

    public static AnalysedTake unified() {
        return take(SectionFixture.unified(), true, Bowing.UNIFIED, "Autumn serenade, letter B");
    }

    public static AnalysedTake free() {
        return take(SectionFixture.free(), true, Bowing.FREE, "Autumn serenade, free");
    }

    public static AnalysedTake withoutLeader() {
        return take(SectionFixture.withoutLeader(), true, Bowing.UNIFIED, "No leader");
    }

    public static AnalysedTake mostTurned() {
        return take(SectionFixture.mostTurned(), true, Bowing.UNIFIED, "Most turned in bar 3");
    }

    /** One player over three beats. */
    public static AnalysedTake alone() {
        return take(SectionFixture.clean(1, 3), true, Bowing.UNIFIED, "One player");
    }

    /** A section over three beats. */
    public static AnalysedTake threeBeats() {
        return take(SectionFixture.clean(8, 3), true, Bowing.UNIFIED, "Three beats");
    }

    public static AnalysedTake withoutPart() {
        return take(SectionFixture.withoutPart(), false, Bowing.UNIFIED, "No part");
    }

    public static AnalysedTake nothingSeen() {
        return take(SectionFixture.nothingSeen(), true, Bowing.UNIFIED, "Nothing seen");
    }

    public static AnalysedTake withoutFacing() {
        return take(SectionFixture.withoutFacing(), true, Bowing.UNIFIED, "Facing not declared");
    }

    public static AnalysedTake named(String label) {
        return take(SectionFixture.named(label), true, Bowing.UNIFIED, label);
    }

    /** Sixty players over four hundred bars. */
    public static AnalysedTake large() {
        return take(SectionFixture.clean(60, 1600), true, Bowing.UNIFIED, "Sixty players");
    }

    /** So many players that their rows are low. */
    public static AnalysedTake manyPlayers() {
        return take(SectionFixture.clean(22, 64), true, Bowing.UNIFIED, "Twenty-two players");
    }

    /** So long that a player's bow takes more than a sheet of paper. */
    public static AnalysedTake overASheet() {
        return take(SectionFixture.clean(2, 260), true, Bowing.UNIFIED, "Two players");
    }

    /** As measured, but the first player's up-bows are placed near the tip; see {@link BowUse.Placed}. */
    private static List<Bows> bows(SectionFixture section) {
        List<Bows> all = new ArrayList<>();
        for (int i = 0; i < section.readings.size(); i++) {
            Bows measured = Bows.of(section.tracks.get(i), section.readings.get(i));
            all.add(
                    i > 0
                            ? measured
                            : new Bows(
                                    measured.player(),
                                    measured.bows().stream()
                                            .map(Fixtures::placed)
                                            .toList()));
        }
        return all;
    }

    private static Bow placed(Bow bow) {
        return bow.use() instanceof BowUse.Length length && bow.stroke().kind() == StrokeKind.UP
                ? new Bow(
                        bow.stroke(),
                        bow.start(),
                        bow.end(),
                        new BowUse.Placed(length.lengthShoulderWidths(), length.lengthShare(), BowPart.TIP, 0.875))
                : bow;
    }

    private static final Evenness EVENNESS = new Evenness(
            OptionalDouble.of(-23.5),
            List.of(
                    new BarEvenness("1", 0, OptionalDouble.of(-22), OptionalDouble.of(1.5), OptionalDouble.of(3.25), 4),
                    new BarEvenness("2", 4, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0)),
            4,
            OptionalDouble.of(3.25),
            OptionalDouble.empty());

    /** A take of which the clip and perhaps somebody say when it was played. */
    public static AnalysedTake filmed(Instant made, Optional<LocalDate> day) {
        return take(
                SectionFixture.unified(), true, Bowing.UNIFIED, "Autumn serenade, letter B", day, Optional.of(made));
    }

    private static AnalysedTake take(SectionFixture section, boolean marked, Bowing bowing, String title) {
        return take(section, marked, bowing, title, Optional.empty(), Optional.empty());
    }

    private static AnalysedTake take(
            SectionFixture section,
            boolean marked,
            Bowing bowing,
            String title,
            Optional<LocalDate> day,
            Optional<Instant> made) {
        Path file = Path.of("rehearsal.take.json");
        Take take = new Take(
                file,
                title,
                Path.of("rehearsal.mp4"),
                section.players,
                marked ? Optional.of(Path.of("part.musicxml")) : Optional.empty(),
                PartChoice.DEFAULT,
                Optional.empty(),
                new BeatsGiven.Steady(120, SectionFixture.START_S),
                bowing,
                day);
        Optional<Part> part = marked
                ? Optional.of(new Part("Violin I", List.of(Bar.full("1", new Metre(4, 4))), List.of()))
                : Optional.empty();
        return new AnalysedTake(
                take,
                new ClipFacts(take.video(), 1280, 720, 25, Optional.of(section.endS), true, made),
                section.endS,
                section.tracks,
                section.readings,
                bows(section),
                part,
                section.comparison,
                UnityByShifts.of(section.comparison),
                Optional.of(EVENNESS),
                Togetherness.of(section.comparison, bows(section), CompareSettings.DEFAULT),
                List.of(),
                Map.of("take", "0".repeat(64), "video", "ab".repeat(32)),
                Map.of("switch_s", "0.15"),
                "0.1.0",
                List.of("The clip ends early; what was readable is used."));
    }
}
