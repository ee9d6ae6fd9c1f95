package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.compare.BowSharing;
import tuttarco.compare.SharedBow.Amounts;
import tuttarco.compare.SharedBow.EndsKnown;
import tuttarco.demo.SceneCatalogue;
import tuttarco.demo.SceneCatalogue.Listed;
import tuttarco.pose.PackedModel;
import tuttarco.strokes.Bows;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Rendered scenes: how sure times are, and how much bow each stroke took and where, against the truth. */
class RenderedBowsTest {
    @TempDir
    Path folder;

    private BowScore score(List<String> names) throws Exception {
        PackedModel.orSkip();
        BowScore score = new BowScore();
        int rendered = 0;
        for (Listed scene : SceneCatalogue.all()) {
            if (names.contains(scene.name())) {
                add(scene, List.of(score));
                rendered++;
            }
        }
        assertEquals(names.size(), rendered);
        return score;
    }

    private void add(Listed scene, List<BowScore> scores) throws Exception {
        Take take = TakeFile.read(scene.render(folder));
        SectionReading reading = SectionReader.standard().read(take.video(), take.players(), (t, l) -> {});
        for (Bows bows : reading.bows()) {
            for (BowScore score : scores) {
                score.add(
                        bows,
                        folder.resolve(scene.name() + ".truth.csv"),
                        folder.resolve(scene.name() + ".truth.bows.csv"));
            }
        }
    }

    @Test
    void timesLengthsAndPlacesAreAsSureAsTheySay() throws Exception {
        BowScore score = score(List.of("plain-violin", "plain-cello"));
        assertTrue(score.changes() >= 25, score.row());
        assertTrue(score.within(1) >= 0.6, score.row());
        assertTrue(score.within(2) >= 0.9, score.row());
        assertTrue(score.measured() >= 25, score.row());
        assertTrue(score.sharesWithin(0.15) >= 0.85, score.row());
        assertTrue(score.placed() >= 15, score.row());
        assertTrue(score.placedRightly() >= 0.9, score.row());
    }

    @Test
    void ofAPlayerWhoTurnsToProfileNothingIsClaimed() throws Exception {
        BowScore score = score(List.of("profile-violin"));
        assertTrue(score.changes() > 0, score.row());
        assertEquals(0, score.placed(), score.row());
    }

    /** Nobody is at the other end of the bow: where players are elsewhere in it the leader is not near an end. */
    @Test
    @Tag("campaign")
    void whoTakesHalfTheLeadersBowIsFoundAndNobodyElse() throws Exception {
        Listed scene = SceneCatalogue.all().stream()
                .filter(s -> s.name().equals("section-bow"))
                .findFirst()
                .orElseThrow();
        BowSharing sharing = Analysis.standard("test")
                .of(scene.render(folder), (t, l) -> {})
                .together()
                .sharing();
        assertEquals(7, sharing.players().size());
        assertEquals(
                List.of("Desk 1 inside", "Desk 3 inside"),
                sharing.players().stream()
                        .filter(p -> p.amount() instanceof Amounts amounts && amounts.half())
                        .map(p -> p.player().label())
                        .toList());
        assertTrue(sharing.players().stream().noneMatch(p -> p.ends() instanceof EndsKnown ends && ends.apart()));
    }

    /** Prints the figures of all scenes for the method page. */
    @Test
    @Tag("campaign")
    void figuresForTheMethodPage() throws Exception {
        PackedModel.orSkip();
        BowScore all = new BowScore();
        for (Listed scene : SceneCatalogue.all()) {
            BowScore score = new BowScore();
            add(scene, List.of(score, all));
            System.out.println("| " + scene.name() + " | " + score.row() + " |");
        }
        System.out.println("| all | " + all.row() + " |");
        assertTrue(all.within(2) >= 0.9, all.row());
        assertTrue(all.placedRightly() >= 0.9, all.row());
    }
}
