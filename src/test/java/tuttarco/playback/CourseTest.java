package tuttarco.playback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CourseTest {
    @Test
    void straightOnTheClipRunsAsTheCourseDoes() {
        Course course = Course.from(3, Optional.empty());
        assertEquals(5.5, course.clipS(2.5), 0);
        assertEquals(2.5, course.runS(5.5, 0), 0);
        assertEquals(List.of(new Course.Stretch(4, 1, 9)), course.between(1, 9));
    }

    @Test
    void aLoopIsEnteredOnceAndGoneRoundForEver() {
        Course course = Course.from(1, Optional.of(new Loop(2, 4)));
        assertEquals(3.5, course.clipS(2.5), 1e-12);
        assertEquals(2, course.clipS(3), 1e-12);
        assertEquals(2.5, course.clipS(3 + 2 * 1000 + 0.5), 1e-9);
        assertEquals(
                List.of(new Course.Stretch(3, 2, 3), new Course.Stretch(2, 3, 5), new Course.Stretch(2, 5, 6)),
                course.between(2, 6));
        assertEquals(5.5, course.runS(2.5, 2), 1e-12);
    }

    @Test
    void behindALoopOneBeginsAtItsBeginning() {
        assertEquals(2, Course.from(4, Optional.of(new Loop(2, 4))).clipS(0), 0);
    }

    /** Stretches join without a gap wherever the course is cut, for lengths that no binary number holds. */
    @Test
    void stretchesJoinWhereverTheyAreCut() {
        Course course = Course.from(0.3, Optional.of(new Loop(0.1, 0.8)));
        Random random = new Random(1);
        double at = 0;
        int stretches = 0;
        while (at < 200) {
            double to = at + 0.02 + random.nextDouble() * 0.3;
            for (Course.Stretch stretch : course.between(at, to)) {
                assertEquals(at, stretch.fromS(), 1e-9);
                assertTrue(stretch.toS() > stretch.fromS());
                double clipToS = stretch.clipS() + stretch.toS() - stretch.fromS();
                assertTrue(stretch.clipS() >= 0.1 && clipToS <= 0.8 + 1e-9, stretch.toString());
                at = stretch.toS();
                stretches++;
            }
        }
        assertTrue(stretches > 1000);
    }

    @Test
    void aLoopHasALength() {
        assertThrows(IllegalArgumentException.class, () -> new Loop(2, 2));
        assertThrows(IllegalArgumentException.class, () -> new Loop(2, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Loop(-1, 2));
    }
}
