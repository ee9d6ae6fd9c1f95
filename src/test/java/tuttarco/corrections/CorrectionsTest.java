package tuttarco.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a log comes to, against the two stacks that undo and redo are by definition. */
class CorrectionsTest {
    private static final Correction ANY = new Correction.Absent("Nora", 1, 2);

    private static List<UUID> inForce(List<LogEntry> entries) {
        return Corrections.of(entries).inForce().stream().map(LogEntry.Done::id).toList();
    }

    @Test
    void everyPrefixOfWhatIsDoneUndoneAndRedoneComesToWhatTheStacksHold() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<LogEntry> entries = new ArrayList<>();
            Deque<LogEntry.Done> done = new ArrayDeque<>();
            Deque<LogEntry.Done> back = new ArrayDeque<>();
            for (int number = 0; number < 60; number++) {
                int what = random.nextInt(3);
                if (what == 1 && !done.isEmpty()) {
                    LogEntry.Done last = done.pop();
                    back.push(last);
                    entries.add(new LogEntry.Undone(Logged.id(number), Logged.at(number), last.id()));
                } else if (what == 2 && !back.isEmpty()) {
                    LogEntry.Done last = back.pop();
                    done.push(last);
                    entries.add(new LogEntry.Redone(Logged.id(number), Logged.at(number), last.id()));
                } else {
                    LogEntry.Done next = Logged.done(number, ANY);
                    done.push(next);
                    back.clear();
                    entries.add(next);
                }
                List<LogEntry.Done> inOrder = new ArrayList<>(done);
                Collections.reverse(inOrder);
                Corrections corrections = Corrections.of(entries);
                assertEquals(inOrder, corrections.inForce(), "seed " + seed + ", line " + number);
                assertEquals(Optional.ofNullable(done.peek()), corrections.undoable());
                assertEquals(Optional.ofNullable(back.peek()), corrections.redoable());
            }
        }
    }

    /** Each program saw only its own lines when it wrote them. */
    @Test
    void linesOfTwoProgramsComeToOneThing() {
        List<LogEntry> entries = new ArrayList<>(List.of(
                Logged.done(1, ANY),
                Logged.done(2, ANY),
                Logged.undone(3, 1),
                Logged.undone(4, 1),
                Logged.done(5, ANY)));
        assertEquals(List.of(Logged.id(2), Logged.id(5)), inForce(entries));
        assertEquals(Optional.empty(), Corrections.of(entries).redoable());
        entries.add(Logged.redone(6, 1));
        assertEquals(List.of(Logged.id(1), Logged.id(2), Logged.id(5)), inForce(entries), "in the order made");
        entries.add(Logged.redone(7, 1));
        entries.add(Logged.undone(8, 99));
        entries.add(Logged.redone(9, 99));
        assertEquals(List.of(Logged.id(1), Logged.id(2), Logged.id(5)), inForce(entries));
    }
}
