package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.faces.FacesInClip;
import tuttarco.faces.Looks;
import tuttarco.pose.PackedModel;

/** Where faces are blurred, against where our own renderer drew eyes, nose and mouth. */
class FacesCoveredTest {
    private static final double EVERY_S = 0.2;

    @TempDir
    Path folder;

    /**
     * What a clip shows of its players' faces.
     *
     * @param points eyes, noses and mouths that the camera sees
     * @param bare those of them that are not blurred
     */
    private record Shown(int points, int bare) {
        @Override
        public String toString() {
            return bare + " of " + points + " bare";
        }
    }

    private Shown shown(SceneCatalogue.Listed listed) throws Exception {
        PackedModel.orSkip();
        listed.render(folder);
        Scene scene = listed.scene();
        DrawnFaces drawn = new DrawnFaces(scene);
        FacesInClip faces =
                FacesInClip.of(folder.resolve(scene.name() + ".mp4"), drawn.players(), Looks.steady(), timeS -> {});
        int points = 0;
        int bare = 0;
        for (double timeS = EVERY_S / 2; timeS < scene.durationS() - EVERY_S; timeS += EVERY_S) {
            List<Shape> blurred = faces.at(timeS);
            for (Point2D point : drawn.at(timeS)) {
                points++;
                bare += blurred.stream().anyMatch(shape -> shape.contains(point)) ? 0 : 1;
            }
        }
        return new Shown(points, bare);
    }

    @ParameterizedTest
    @ValueSource(strings = {"sway", "shake", "cut-back"})
    void nothingOfAFaceIsBare(String name) throws Exception {
        Shown shown = shown(SceneFixture.listed(name));
        assertTrue(shown.points() > 100, shown.toString());
        assertEquals(0, shown.bare(), shown.toString());
    }

    /** Prints the figures of all scenes for the method page. */
    @Test
    @Tag("campaign")
    void figuresForTheMethodPage() throws Exception {
        int points = 0;
        int bare = 0;
        for (SceneCatalogue.Listed scene : SceneCatalogue.all()) {
            Shown shown = shown(scene);
            System.out.println(scene.name() + ": " + shown);
            points += shown.points();
            bare += shown.bare();
        }
        System.out.println("all: " + new Shown(points, bare));
        assertTrue(points > 0);
    }
}
