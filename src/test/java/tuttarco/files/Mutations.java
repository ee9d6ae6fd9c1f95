package tuttarco.files;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;

/** Damaged copies of a good file, always the same ones. */
public final class Mutations {
    /** Reads one file's content. */
    public interface Reading {
        void read(byte[] content) throws Exception;
    }

    private static final byte[] NASTY = {0, 9, 10, 13, 34, 35, 38, 39, 44, 45, 46, 47, 48, 57, 58, 60, 62, 91, 125, -1};

    private Mutations() {}

    /** Reads damaged copies; each is read or refused in one sentence, and some of them are refused. */
    public static void onlyInputExceptions(byte[] good, int count, Reading reading) {
        Random random = new Random(20_261_125);
        int refused = 0;
        for (int i = 0; i < count; i++) {
            byte[] damaged = damaged(good, random);
            try {
                reading.read(damaged);
            } catch (InputException e) {
                assertOneSentence(e);
                refused++;
            } catch (Exception e) {
                throw new AssertionError("copy " + i + " was not refused properly", e);
            }
        }
        assertTrue(refused > count / 20, "only " + refused + " of " + count + " were refused");
    }

    public static void assertOneSentence(InputException e) {
        assertFalse(e.getMessage().isBlank());
        assertTrue(e.getMessage().length() < 600, e.getMessage());
        assertTrue(e.getMessage().chars().noneMatch(Character::isISOControl), "control characters in the message");
    }

    private static byte[] damaged(byte[] good, Random random) {
        byte[] copy = good.clone();
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(copy.length);
            switch (random.nextInt(5)) {
                case 0 -> copy[at] = (byte) random.nextInt(256);
                case 1 -> copy[at] = NASTY[random.nextInt(NASTY.length)];
                case 2 -> copy = Arrays.copyOf(copy, Math.max(1, at));
                case 3 -> copy = joined(copy, 0, at, copy, Math.max(0, at - random.nextInt(20)), copy.length);
                default ->
                    copy = joined(copy, 0, at, copy, Math.min(copy.length, at + 1 + random.nextInt(9)), copy.length);
            }
        }
        return copy;
    }

    private static byte[] joined(byte[] a, int fromA, int toA, byte[] b, int fromB, int toB) {
        byte[] joined = new byte[toA - fromA + toB - fromB];
        System.arraycopy(a, fromA, joined, 0, toA - fromA);
        System.arraycopy(b, fromB, joined, toA - fromA, toB - fromB);
        return joined.length == 0 ? new byte[] {0} : joined;
    }
}
