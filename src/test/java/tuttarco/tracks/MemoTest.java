package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.apache.commons.math3.util.ResizableDoubleArray;
import org.junit.jupiter.api.Test;
import tuttarco.seats.SeatBox;

class MemoTest {
    private record Mixed(double number, int count, boolean flag, Hand hand, SeatBox box, List<KeyPose.Place> places) {}

    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private final Memo writing = new WrittenMemo(written);

    private Memo reading() {
        return new ReadMemo(new ByteArrayInputStream(written.toByteArray()));
    }

    @Test
    void numbersStayExact() throws IOException {
        double[] numbers = {
            0, -0.0, 1 / 3.0, -Math.PI, Double.MIN_VALUE, Double.MAX_VALUE, Double.NEGATIVE_INFINITY, Double.NaN
        };
        for (double number : numbers) {
            assertEquals(number, writing.number(number), "a written number is given back");
        }
        ResizableDoubleArray series = new ResizableDoubleArray(numbers);
        writing.series(series);
        assertArrayEquals(numbers, series.getElements());

        Memo reading = reading();
        for (double number : numbers) {
            assertEquals(Double.doubleToLongBits(number), Double.doubleToLongBits(reading.number(5)));
        }
        ResizableDoubleArray read = new ResizableDoubleArray();
        reading.series(read);
        assertArrayEquals(numbers, read.getElements());
    }

    @Test
    void recordsOfAllKindsComeBack() throws IOException {
        Mixed mixed = new Mixed(
                1.5,
                -3,
                true,
                Hand.RIGHT,
                new SeatBox(1, 2, 3, 4),
                List.of(new KeyPose.Place(0.1, 0.2), new KeyPose.Place(3, 4)));
        KeyPose pose =
                Bodies.of(new KeyPose.Place(1, 2), new KeyPose.Place(3, 4)).at(7);
        BitSet flags = new BitSet();
        flags.set(1);
        writing.value(Mixed.class, mixed);
        writing.list(KeyPose.class, new ArrayList<>(List.of(pose, pose)));
        writing.flags(flags, 3);
        writing.count(12);

        Memo reading = reading();
        assertEquals(mixed, reading.value(Mixed.class, null));
        List<KeyPose> poses = new ArrayList<>();
        reading.list(KeyPose.class, poses);
        assertEquals(List.of(pose, pose), poses);
        BitSet read = new BitSet();
        reading.flags(read, 3);
        assertEquals(flags, read);
        assertEquals(12, reading.count(0));
        assertThrows(IOException.class, () -> reading.count(0), "nothing is left");
    }

    @Test
    void whatCantHaveBeenWrittenIsRefused() throws IOException {
        writing.value(SeatBox.class, new SeatBox(1, 2, 3, 4));
        byte[] bytes = written.toByteArray();
        // a seat without a width
        bytes[11] = 0;
        assertThrows(IOException.class, () -> new ReadMemo(new ByteArrayInputStream(bytes)).value(SeatBox.class, null));
        byte[] negative = {-1, 0, 0, 0};
        assertThrows(IOException.class, () -> new ReadMemo(new ByteArrayInputStream(negative)).count(0));
        byte[] noHand = {0, 0, 0, 9};
        assertThrows(IOException.class, () -> new ReadMemo(new ByteArrayInputStream(noHand)).value(Hand.class, null));
    }

    @Test
    void aFlagIsGivenBack() throws IOException {
        assertTrue(writing.flag(true));
        assertFalse(writing.flag(false));
        Memo reading = reading();
        assertTrue(reading.flag(false));
        assertFalse(reading.flag(true));
    }
}
