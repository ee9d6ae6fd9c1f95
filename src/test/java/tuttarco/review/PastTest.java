package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PastTest {
    /** The model is a list of all states with a place in it: back and forth move the place, a change cuts off what follows. */
    @Test
    void backAndForthGoThroughAListOfWhatWas() {
        Random random = new Random(6);
        Past<Integer> past = new Past<>();
        List<Integer> states = new ArrayList<>(List.of(0));
        int place = 0;
        int now = 0;
        for (int i = 1; i < 5000; i++) {
            assertEquals(place > 0, past.canGoBack());
            assertEquals(place < states.size() - 1, past.canGoForth());
            switch (random.nextInt(3)) {
                case 0 -> {
                    past.keep(now);
                    now = i;
                    states.subList(place + 1, states.size()).clear();
                    states.add(i);
                    place++;
                }
                case 1 -> {
                    Optional<Integer> before = past.back(now);
                    assertEquals(place > 0, before.isPresent());
                    if (before.isPresent()) {
                        now = before.get();
                        place--;
                    }
                }
                default -> {
                    Optional<Integer> after = past.forth(now);
                    assertEquals(place < states.size() - 1, after.isPresent());
                    if (after.isPresent()) {
                        now = after.get();
                        place++;
                    }
                }
            }
            assertEquals(states.get(place), now);
        }
        assertTrue(place > 0, "something was left to go back to");
        past.clear();
        assertFalse(past.canGoBack() || past.canGoForth());
    }
}
