package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.chart.SectionFixture;
import tuttarco.files.InputException;

class MomentPicturesTest {
    private final List<Double> askedS = new ArrayList<>();
    private int widthPx;

    private MomentPictures of(SectionFixture fixture, double aspect) throws InterruptedException {
        return MomentPictures.of(fixture.comparison, aspect, (timesS, width) -> {
            askedS.addAll(timesS);
            widthPx = width;
            return timesS.stream()
                    .map(t -> t < 20 ? Optional.of(new byte[] {(byte) Math.round(t)}) : Optional.<byte[]>empty())
                    .toList();
        });
    }

    /** Bars of two seconds from second 1; the spot begins with bar 3. */
    @Test
    void eachBarsBeginningIsAskedForOnceInOrder() throws Exception {
        MomentPictures pictures = of(SectionFixture.unified(), 16.0 / 9);
        assertEquals(12, askedS.size());
        assertEquals(List.of(1.0, 3.0, 5.0), askedS.subList(0, 3));
        assertEquals(23, askedS.get(11));
        assertEquals(
                "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(new byte[] {5}),
                pictures.at(8).orElseThrow().address());
        assertTrue(pictures.at(9).isEmpty(), "begins no bar");
        assertTrue(pictures.at(44).isEmpty(), "no picture any more at 23 s");
    }

    @Test
    void manyStillsAreSmaller() throws Exception {
        of(SectionFixture.unified(), 16.0 / 9);
        assertEquals(640, widthPx);
        of(SectionFixture.clean(2, 1600), 16.0 / 9);
        assertEquals(320, widthPx);
        of(SectionFixture.clean(2, 1600), 9.0 / 16);
        assertEquals(180, widthPx);
    }

    @Test
    void aClipThatCannotBeReadLeavesNoPictures() throws Exception {
        MomentPictures none = MomentPictures.of(SectionFixture.unified().comparison, 16.0 / 9, (timesS, width) -> {
            throw new InputException("gone");
        });
        assertTrue(none.at(0).isEmpty());
    }
}
