package tuttarco.playback;

import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;

/**
 * One carrying out of what was ordered: a picture that is looked for and stood still at, or the playing of a course from a
 * picture on. Once it is over nothing comes of it any more.
 */
final class Run {
    private final Course course;
    private final int steps;
    private final double speed;
    private final boolean moving;
    private final Queue<Due> due = new ArrayDeque<>();
    private boolean heard;
    private boolean over;

    /** What the director waits for. */
    sealed interface Due {
        /** When it is due, seconds played. */
        double playedS();
    }

    /** A picture to be shown. */
    record Shown(BufferedImage picture, double timeS, double playedS) implements Due {}

    /** The end of the clip. */
    record End(double playedS) implements Due {}

    private Run(Course course, int steps, double speed, boolean moving) {
        this.course = course;
        this.steps = steps;
        this.speed = speed;
        this.moving = moving;
    }

    /** Stands still so many pictures after the one that is seen at a time, before it if negative. */
    static Run still(double timeS, int steps) {
        return new Run(Course.from(timeS, Optional.empty()), steps, 1, false);
    }

    static Run moving(Course course, double speed) {
        return new Run(course, 0, speed, true);
    }

    Course course() {
        return course;
    }

    int steps() {
        return steps;
    }

    double speed() {
        return speed;
    }

    boolean moving() {
        return moving;
    }

    /** When the picture of a time is due in a lap, seconds played. */
    double playedS(double clipS, int lap) {
        return course.runS(clipS, lap) / speed;
    }

    /** Adds what comes due after all others; false if it is over, and nobody will take it. */
    synchronized boolean add(Due next) {
        if (over) {
            return false;
        }
        due.add(next);
        notifyAll();
        return true;
    }

    /** What comes due next, without taking it; waits a moment for it if there is nothing yet. */
    synchronized Optional<Due> next() throws InterruptedException {
        long untilNs = System.nanoTime() + (long) (Clock.MOMENT_S * 1e9);
        while (due.isEmpty() && !over && System.nanoTime() < untilNs) {
            wait(1);
        }
        return Optional.ofNullable(due.peek());
    }

    synchronized Optional<Due> nextNow() {
        return Optional.ofNullable(due.peek());
    }

    synchronized void take() {
        due.remove();
    }

    /** Gives sound to be heard, unless it is over. */
    synchronized void sound(SoundOut out, float[] block) {
        if (!over) {
            out.write(block);
            heard = true;
        }
    }

    /** Whether there is sound to begin with. */
    synchronized boolean heard() {
        return heard;
    }

    synchronized boolean over() {
        return over;
    }

    /** Ends it; what was still due comes back. */
    synchronized Queue<Due> end() {
        over = true;
        Queue<Due> left = new ArrayDeque<>(due);
        due.clear();
        notifyAll();
        return left;
    }
}
