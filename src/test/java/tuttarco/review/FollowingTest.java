package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pictures at 25 a second. */
class FollowingTest {
    private final Following following = new Following(0.04);

    @Test
    void playingIsFollowed() {
        assertEquals(Optional.of(1.0), following.seen(1.0, true));
        assertEquals(Optional.of(1.04), following.seen(1.04, true));
    }

    @Test
    void aTimeThatWasAskedForStaysWhileItsPictureIsSeen() {
        following.sought(5.03);
        assertEquals(Optional.empty(), following.seen(1.08, false), "from before");
        assertEquals(1.08, following.shownS(1.08));
        assertEquals(Optional.empty(), following.seen(5.0, false));
        assertEquals(5.03, following.shownS(5.0));
        assertEquals(Optional.of(5.04), following.seen(5.04, false), "a step to the next");
        assertEquals(5.04, following.shownS(5.04));
    }

    @Test
    void whilePlayingTheJumpIsWaitedFor() {
        following.sought(5.03);
        assertEquals(Optional.empty(), following.seen(1.08, true));
        assertEquals(Optional.of(5.04), following.seen(5.04, true));
        assertEquals(Optional.of(5.08), following.seen(5.08, true));
        following.sought(2);
        assertEquals(Optional.empty(), following.seen(5.12, true));
        assertEquals(Optional.of(2.2), following.seen(2.2, true), "pictures may be left out");
    }

    @Test
    void whatBeginsIsWhereItIs() {
        following.sought(99);
        assertEquals(Optional.empty(), following.seen(18.9, false), "behind the end");
        following.begins();
        assertEquals(Optional.of(0.0), following.seen(0, true));
    }
}
