package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.compare.PlayerTiming.Measured;
import tuttarco.compare.Timing;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;

class SheetTimingTest {
    private static final Player PLAYER =
            Fixtures.unified().comparison().players().get(1);

    private static SheetTiming timing(Claim claim, double medianMs, double lowMs, double highMs, double spreadMs) {
        Measured lag = new Measured(medianMs, spreadMs, new Interval(lowMs, highMs), 30, 0.01);
        return of(true, new PlayerTiming(PLAYER, 40, Optional.of(lag), claim));
    }

    private static SheetTiming of(boolean toLeader, PlayerTiming player) {
        return new SheetTiming(new Timing(toLeader, List.of(), List.of(player)), PLAYER);
    }

    @Test
    void lateIsToldInHundredthsWithItsDoubt() {
        assertEquals(
                List.of(
                        "Your bow changed a little after your leader's: by about 6 hundredths of a second. That is not "
                                + "quite certain; it may be 5 to 8 hundredths of a second after (40 changes).",
                        "Your leader's changes are only the measure here; they need not be the right ones."),
                timing(Claim.LATE, 62, 51, 80, 20).said(false));
    }

    @Test
    void earlyIsBefore() {
        assertEquals(
                "Your bow changed a little before your leader's: by about 6 hundredths of a second. That is not "
                        + "quite certain; it may be 5 to 8 hundredths of a second before (40 changes).",
                timing(Claim.EARLY, -62, -80, -51, 20).said(false).get(0));
    }

    @Test
    void whatCannotBeToldApartIsSaidToBeSo() {
        assertEquals(
                "Your bow was not clearly before your leader's nor clearly after: from 1 hundredth of a second before to "
                        + "2 after, by 40 changes. In this film less than 3 hundredths of a second can't be told.",
                timing(Claim.NONE, 4, -12, 18, 20).said(false).get(0));
    }

    @Test
    void togetherAndSteadyArePraised() {
        assertEquals(
                List.of(
                        "You changed bow together with your leader, less than a tenth of a second apart (40 changes).",
                        "You kept steady from change to change: the middle half of your changes lay within 2 hundredths of a second."),
                timing(Claim.NONE, 4, -12, 18, 20).well());
    }

    /** Within a tenth of a second changes pass as together; a median that may lie beyond is not called so. */
    @Test
    void whatMayBeFartherApartIsNotCalledTogether() {
        assertEquals(List.of(), timing(Claim.NONE, 40, -30, 110, 120).well());
    }

    @Test
    void tooFewSayNothing() {
        SheetTiming few = of(true, new PlayerTiming(PLAYER, 3, Optional.empty(), Claim.TOO_FEW));
        assertEquals(
                List.of(
                        "Only 3 of your bow changes could be set beside your leader's, and it takes 6 to say anything."),
                few.said(false));
        assertEquals(List.of(), few.well());
    }

    @Test
    void withoutALeaderTheOthersAreTheMeasure() {
        Measured lag = new Measured(62, 20, new Interval(51, 80), 30, 0.01);
        assertEquals(
                "Your bow changed a little after most of the others': by about 6 hundredths of a second. That is not "
                        + "quite certain; it may be 5 to 8 hundredths of a second after (40 changes).",
                of(false, new PlayerTiming(PLAYER, 40, Optional.of(lag), Claim.LATE))
                        .said(false)
                        .get(0));
    }

    @Test
    void whoLeadsIsTheMeasure() {
        SheetTiming leader = new SheetTiming(new Timing(true, List.of(), List.of()), PLAYER);
        assertEquals(List.of("You lead: the others' bow changes are measured from yours."), leader.said(true));
    }
}
