package tuttarco.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KWeightingTest {
    private static void assertSame(Biquad expected, Biquad actual) {
        assertEquals(expected.b0(), actual.b0(), 1e-9);
        assertEquals(expected.b1(), actual.b1(), 1e-9);
        assertEquals(expected.b2(), actual.b2(), 1e-9);
        assertEquals(expected.a1(), actual.a1(), 1e-9);
        assertEquals(expected.a2(), actual.a2(), 1e-9);
    }

    /** Response of a filter at a frequency, dB: the transfer function on the unit circle. */
    private static double gainDb(Biquad filter, double frequencyPerS, double ratePerS) {
        double w = 2 * Math.PI * frequencyPerS / ratePerS;
        double above = Math.hypot(
                filter.b0() + filter.b1() * Math.cos(w) + filter.b2() * Math.cos(2 * w),
                filter.b1() * Math.sin(w) + filter.b2() * Math.sin(2 * w));
        double below = Math.hypot(
                1 + filter.a1() * Math.cos(w) + filter.a2() * Math.cos(2 * w),
                filter.a1() * Math.sin(w) + filter.a2() * Math.sin(2 * w));
        return 20 * Math.log10(above / below);
    }

    /** ITU-R BS.1770-4, tables 1 and 2 (from memory, as in the design notes). */
    @Test
    void hasThePublishedCoefficientsAt48000() {
        assertSame(
                new Biquad(1.53512485958697, -2.69169618940638, 1.19839281085285, -1.69065929318241, 0.73248077421585),
                KWeighting.head(48_000));
        assertSame(new Biquad(1, -2, 1, -1.99004745483398, 0.99007225036621), KWeighting.highPass(48_000));
    }

    /**
     * The analogue prototypes with their corners, quality and gain as often derived from the tables (from memory: 1681.97 Hz,
     * 0.7072, 4.0 dB; 38.135 Hz, 0.5003), brought to the rate by the textbook's bilinear transform.
     */
    @ParameterizedTest
    @ValueSource(ints = {22_050, 44_100, 48_000, 96_000})
    void isThePrewarpedBilinearTransformOfThePrototypes(int ratePerS) {
        double k = Math.tan(Math.PI * 1681.974450955533 / ratePerS);
        double q = 0.7071752369554196;
        double high = Math.pow(10, 3.999843853973347 / 20);
        double band = Math.pow(high, 0.4996667741545416);
        double a0 = 1 + k / q + k * k;
        assertSame(
                new Biquad(
                        (high + band * k / q + k * k) / a0,
                        2 * (k * k - high) / a0,
                        (high - band * k / q + k * k) / a0,
                        2 * (k * k - 1) / a0,
                        (1 - k / q + k * k) / a0),
                KWeighting.head(ratePerS));
        double kLow = Math.tan(Math.PI * 38.13547087602444 / ratePerS);
        double qLow = 0.5003270373238773;
        double below = 1 + kLow / qLow + kLow * kLow;
        Biquad highPass = KWeighting.highPass(ratePerS);
        assertEquals(2 * (kLow * kLow - 1) / below, highPass.a1(), 1e-9);
        assertEquals((1 - kLow / qLow + kLow * kLow) / below, highPass.a2(), 1e-9);
        assertEquals(-2, highPass.b1() / highPass.b0(), 1e-9);
    }

    /** The response at other rates is that at 48,000, as far as a bilinear transform lets it near the highest frequencies. */
    @ParameterizedTest
    @CsvSource({"22050, 4000, 0.1", "22050, 1000, 0.03", "22050, 40, 0.02", "44100, 10000, 0.02", "96000, 10000, 0.02"})
    void soundsTheSameAtEveryRate(int ratePerS, double frequencyPerS, double withinDb) {
        double published = gainDb(KWeighting.head(48_000), frequencyPerS, 48_000)
                + gainDb(KWeighting.highPass(48_000), frequencyPerS, 48_000);
        double here = gainDb(KWeighting.head(ratePerS), frequencyPerS, ratePerS)
                + gainDb(KWeighting.highPass(ratePerS), frequencyPerS, ratePerS);
        assertEquals(published, here, withinDb);
    }
}
