package tuttarco.demo;

import java.util.List;
import tuttarco.take.Bowing;

/** A small scene for tests. */
final class SceneFixture {
    private SceneFixture() {}

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
}
