package tuttarco.tracks;

import java.io.IOException;
import java.util.BitSet;
import java.util.List;
import org.apache.commons.math3.util.ResizableDoubleArray;

/**
 * What is written down of a tracker, so that another run can go on from there to the same result.
 *
 * <p>Each class tells its values one after the other in one method, for writing as for reading: a memo being written gives
 * each value back as it is, a memo being read gives back what was written in its place. So the two can't disagree. Numbers
 * stay exact.
 */
public sealed interface Memo permits WrittenMemo, ReadMemo {
    double number(double value) throws IOException;

    int count(int value) throws IOException;

    boolean flag(boolean value) throws IOException;

    /**
     * A value of doubles, ints, booleans, enums, and records and lists of such.
     *
     * @param value ignored in a memo being read
     */
    <T> T value(Class<T> type, T value) throws IOException;

    /** Numbers that grow; empty before they are read. */
    default void series(ResizableDoubleArray numbers) throws IOException {
        int n = count(numbers.getNumElements());
        for (int i = 0; i < n; i++) {
            boolean known = i < numbers.getNumElements();
            double number = number(known ? numbers.getElement(i) : 0);
            if (!known) {
                numbers.addElement(number);
            }
        }
    }

    /** Values that grow; empty before they are read. */
    default <T> void list(Class<T> type, List<T> values) throws IOException {
        int n = count(values.size());
        for (int i = 0; i < n; i++) {
            boolean known = i < values.size();
            T value = value(type, known ? values.get(i) : null);
            if (!known) {
                values.add(value);
            }
        }
    }

    /**
     * Flags.
     *
     * @param n how many there are
     */
    default void flags(BitSet flags, int n) throws IOException {
        for (int i = 0; i < n; i++) {
            flags.set(i, flag(flags.get(i)));
        }
    }
}
