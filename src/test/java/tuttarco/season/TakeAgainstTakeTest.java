package tuttarco.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tuttarco.compare.Metric;
import tuttarco.compare.Verdict;
import tuttarco.season.Changed.Claim;
import tuttarco.season.Changed.Of;

/** Takes of eight players made by hand, with what must come out. */
class TakeAgainstTakeTest {
    private static final int PLAYERS = 8;

    private static Records sixteenBars() {
        return Records.bars(1, 16, PLAYERS);
    }

    /** Two of eight players turned in bars 5 to 8. */
    private static Records twoTurned() {
        Records take = sixteenBars();
        for (int bar = 4; bar < 8; bar++) {
            take.against(6, bar, 4).against(7, bar, 4);
        }
        return take;
    }

    private static Changed section(TakeAgainstTake takes) {
        return takes.of(Metric.WITH_MARKING, Of.SECTION, "").orElseThrow();
    }

    /** Eight of 128 pairs: t = 2.910 with 127 degrees of freedom, and twice its p, as half of the error is the section's. */
    @Test
    void whatTwoPlayersNoLongerDoIsBetterForTheSection() {
        TakeAgainstTake takes = TakeAgainstTake.of(
                twoTurned().take("Tuesday"), sixteenBars().atBeat(0.4).take("Friday"));
        Changed section = section(takes);
        assertEquals(Claim.BETTER, section.claim());
        assertEquals(128, section.pairs());
        assertEquals(1 - 8 / 128.0, section.first(), 1e-9);
        assertEquals(1, section.second(), 1e-9);
        assertEquals(2 * 0.0042722, section.p().orElseThrow(), 1e-6);
        assertEquals(
                List.of(section), takes.shown(), "four bars are too few to say it of a player, two players of a bar");
        assertEquals(
                List.of(new Stretch(
                        List.of("p6", "p7"), List.of("5", "6", "7", "8"), new Tally(0, 32, 32), new Tally(32, 32, 32))),
                takes.stretches());
    }

    @Test
    void theOtherWayRoundItIsWorse() {
        TakeAgainstTake takes =
                TakeAgainstTake.of(sixteenBars().take("a"), twoTurned().take("b"));
        assertEquals(Claim.WORSE, section(takes).claim());
        assertFalse(takes.stretches().get(0).more());
    }

    @Test
    void takesThatAreTheSameHaveNotChanged() {
        TakeAgainstTake takes =
                TakeAgainstTake.of(twoTurned().take("a"), twoTurned().take("b"));
        assertTrue(takes.changes().size() >= 1 + PLAYERS + 16);
        assertEquals(List.of(), takes.shown());
        assertEquals(List.of(), takes.stretches());
        assertEquals(Claim.NONE, section(takes).claim());
        assertTrue(section(takes).p().isEmpty(), "nothing differs, so nothing is asked");
    }

    /** A player who was turned in eight of sixteen bars: 2 / 2^8 twice, and Holm over what else could be asked. */
    @Test
    void aPlayerIsNamedWhoseBarsSayItAlone() {
        Records before = sixteenBars();
        for (int bar = 0; bar < 8; bar++) {
            before.against(3, bar, 4);
        }
        TakeAgainstTake takes =
                TakeAgainstTake.of(before.take("a"), sixteenBars().take("b"));
        Changed player = takes.of(Metric.WITH_MARKING, Of.PLAYER, "p3").orElseThrow();
        assertEquals(Claim.BETTER, player.claim());
        assertEquals(0.5, player.difference(), 1e-9);
        assertEquals(2 * 2 * 2 / 256.0, player.p().orElseThrow(), 1e-9, "with the leader is asked too");
    }

    /** All eight turned in one bar: 2 / 2^8 for the bar, but eight of 128 pairs for the section. */
    @Test
    void aBarIsNamedWhosePlayersSayItAlone() {
        Records before = sixteenBars();
        for (int p = 0; p < PLAYERS; p++) {
            before.against(p, 9, 4);
        }
        TakeAgainstTake takes =
                TakeAgainstTake.of(before.take("a"), sixteenBars().take("b"));
        Changed bar = takes.of(Metric.WITH_MARKING, Of.BAR, "10").orElseThrow();
        assertEquals(Claim.BETTER, bar.claim());
        assertEquals(PLAYERS, bar.pairs());
        assertEquals(0, bar.first(), 1e-9);
    }

    /** A player misread on every fourth beat of one take differs in all bars, but by no more than errors of reading may. */
    @Test
    void whatReadingMayMakeIsNotClaimed() {
        Records before = sixteenBars();
        for (int bar = 0; bar < 16; bar++) {
            before.against(3, bar, 1);
        }
        TakeAgainstTake takes =
                TakeAgainstTake.of(before.take("a"), sixteenBars().take("b"));
        Changed player = takes.of(Metric.WITH_MARKING, Of.PLAYER, "p3").orElseThrow();
        assertEquals(0.25, player.difference(), 1e-9);
        assertTrue(player.p().orElseThrow() < 0.001);
        assertEquals(Claim.NONE, player.claim());
        assertEquals(Claim.NONE, section(takes).claim());
    }

    @Test
    void barsAndPlayersOfOneTakeOnlyAreLeftOutAndSaid() {
        LinedUp common = LinedUp.of(
                Records.bars(3, 10, 4).take("a"),
                Records.bars(1, 8, 6).atBeat(0.7).take("b"));
        assertEquals(List.of("3", "4", "5", "6", "7", "8"), common.bars());
        assertEquals(List.of("9", "10"), common.firstOnlyBars());
        assertEquals(List.of("1", "2"), common.secondOnlyBars());
        assertEquals(List.of("p0", "p1", "p2", "p3"), common.players());
        assertEquals(List.of(), common.firstOnlyPlayers());
        assertEquals(List.of("p4", "p5"), common.secondOnlyPlayers());
        assertEquals(List.of(), common.remarkedBars());
    }

    @Test
    void barsMarkedOtherwiseAreSaid() {
        LinedUp common = LinedUp.of(
                Records.bars(1, 4, 4).take("a"), Records.bars(3, 8, 4).upFirst().take("b"));
        assertEquals(List.of("3", "4"), common.remarkedBars());
    }

    /** Bar 2 was played three times: twelve beats, of which the player missed four. */
    @Test
    void allPlayingsOfABarCount() {
        TakeOnRecord often = Records.inOrder(List.of("1", "2", "2", "2", "3"), 4)
                .against(1, 2, 4)
                .take("a");
        TakeAgainstTake takes = TakeAgainstTake.of(often, Records.bars(1, 3, 4).take("b"));
        PlayerBar played = takes.playerBars().stream()
                .filter(b -> b.player().equals("p1") && b.bar().equals("2"))
                .findFirst()
                .orElseThrow();
        assertEquals(new Tally(8, 12, 12), played.first());
        assertEquals(new Tally(4, 4, 4), played.second());
        assertEquals(1 / 3.0, played.difference().orElseThrow(), 1e-9);
    }

    @Test
    void whatCouldNotBeJudgedDoesNotCount() {
        Records unseen = sixteenBars();
        for (int bar = 0; bar < 16; bar++) {
            unseen.as(Verdict.UNSEEN, 2, bar, 4).as(Verdict.UNSURE, 3, bar, 2);
        }
        TakeAgainstTake takes =
                TakeAgainstTake.of(unseen.take("a"), sixteenBars().take("b"));
        assertEquals(Optional.empty(), takes.of(Metric.WITH_MARKING, Of.PLAYER, "p2"));
        assertEquals(7 * 16, section(takes).pairs());
        assertEquals(new Tally(6 * 4 + 2, 6 * 4 + 2, 8 * 4), takes.bar("5", true));
        assertEquals(List.of(), takes.shown());
    }

    /** Fewer than six bars of a player, fewer than six players of a bar. */
    @Test
    void nothingIsClaimedFromTooLittle() {
        Records before = Records.bars(1, 5, 5);
        for (int bar = 0; bar < 5; bar++) {
            for (int p = 0; p < 5; p++) {
                before.against(p, bar, 4);
            }
        }
        TakeAgainstTake takes =
                TakeAgainstTake.of(before.take("a"), Records.bars(1, 5, 5).take("b"));
        assertEquals(List.of(section(takes)), takes.shown(), "all 25 say it together");
        List<Changed> others =
                takes.changes().stream().filter(c -> c.of() != Of.SECTION).toList();
        assertEquals(10, others.size());
        assertTrue(others.stream().allMatch(c -> c.claim() == Claim.TOO_FEW && c.p().isEmpty()));
    }

    /** Sixty milliseconds late in all bars, then together: beyond the 28 ms that can't be seen, 20 in each take. */
    @Test
    void whoNoLongerComesLateIsBetter() {
        Records before = sixteenBars();
        Records after = sixteenBars();
        for (int bar = 0; bar < 16; bar++) {
            before.late(1, bar, 60).late(2, bar, 25);
            after.late(1, bar, 0).late(2, bar, 0);
        }
        TakeAgainstTake takes = TakeAgainstTake.of(before.take("a"), after.take("b"));
        Changed lag = takes.of(Metric.LAG, Of.PLAYER, "p1").orElseThrow();
        assertEquals(Claim.BETTER, lag.claim());
        assertEquals(-60, lag.difference(), 1e-9);
        assertEquals(
                Claim.NONE, takes.of(Metric.LAG, Of.PLAYER, "p2").orElseThrow().claim());
        assertEquals(
                Claim.WORSE,
                TakeAgainstTake.of(after.take("a"), before.take("b"))
                        .of(Metric.LAG, Of.PLAYER, "p1")
                        .orElseThrow()
                        .claim());
    }

    /** In free takes nobody is late, and to go apart is neither better nor worse; to sound more even is better. */
    @Test
    void freeTakesAreAskedForTheirSound() {
        Records before = twoTurned().free();
        Records after = sixteenBars().free();
        for (int bar = 0; bar < 16; bar++) {
            before.late(1, bar, 60).sounding(bar, 2 + 0.1 * (bar % 3), 3);
            after.late(1, bar, 0).sounding(bar, 1 + 0.1 * (bar % 2), 3);
        }
        TakeAgainstTake takes = TakeAgainstTake.of(before.take("a"), after.take("b"));
        assertEquals(Claim.OTHERWISE, section(takes).claim());
        assertEquals(Optional.empty(), takes.of(Metric.LAG, Of.PLAYER, "p1"));
        Changed spread = takes.of(Metric.LOUDNESS_SPREAD, Of.SECTION, "").orElseThrow();
        assertEquals(Claim.BETTER, spread.claim());
        assertEquals(16, spread.pairs());
        assertEquals(spread.difference(), spread.paired().orElseThrow().mean(), 1e-9);
        assertEquals(
                Claim.NONE, takes.of(Metric.DIP, Of.SECTION, "").orElseThrow().claim());
    }

    @Test
    void withNothingInCommonNothingIsCompared() {
        TakeOnRecord one = Records.bars(1, 8, 4).take("a");
        for (TakeOnRecord other :
                List.of(Records.bars(9, 12, 4).take("b"), Records.bars(1, 8, 4).take("b", "other"))) {
            TakeAgainstTake takes = TakeAgainstTake.of(one, other);
            assertFalse(takes.common().anything());
            assertEquals(List.of(), takes.changes());
            assertEquals(List.of(), takes.playerBars());
        }
    }

    @Test
    void ofSeveralTakesTheLastIsSetBesideTheFirstAndEachBesideTheOneBefore() {
        List<TakeOnRecord> three =
                Stream.of("a", "b", "c").map(t -> Records.bars(1, 4, 2).take(t)).toList();
        assertEquals(
                List.of("a c", "a b", "b c"),
                TakeAgainstTake.among(three).stream()
                        .map(t -> t.first().title() + " " + t.second().title())
                        .toList());
        assertEquals(1, TakeAgainstTake.among(three.subList(0, 2)).size());
        assertThrows(IllegalArgumentException.class, () -> TakeAgainstTake.among(three.subList(0, 1)));
    }
}
