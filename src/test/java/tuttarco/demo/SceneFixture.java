package tuttarco.demo;

import java.util.List;
import tuttarco.take.Bowing;

/** Scenes for tests: a small one, and those of the catalogue. */
final class SceneFixture {
    private SceneFixture() {}

    /** A small scene of three bars. */
    static Scene of(List<Cast> cast) {
        return new Scene(
                "small",
                "small",
                cast,
                Passage.of("study", "d2 u2 | d1 u1 d1 u1 | d2 u2"),
                200,
                Bowing.UNIFIED,
                Picture.of(160, 120),
                Conditions.EASY,
                Scene.Sound.CLICKS,
                5);
    }

    /** A scene of the catalogue. */
    static SceneCatalogue.Listed listed(String name) {
        return SceneCatalogue.all().stream()
                .filter(listed -> listed.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
