package tuttarco.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AxisTest {
    @ParameterizedTest
    @ValueSource(doubles = {-80, -45, -10, 0, 10, 45, 80})
    void pointsOnALineHaveThatLineAsAxis(double angleDeg) {
        double angleRad = Math.toRadians(angleDeg);
        double[] xs = new double[11];
        double[] ys = new double[11];
        for (int i = 0; i < 11; i++) {
            xs[i] = 5 + (i - 3) * Math.cos(angleRad);
            ys[i] = -2 + (i - 3) * Math.sin(angleRad);
        }
        Axis axis = Axis.principal(xs, ys);
        assertEquals(Math.cos(angleRad), axis.x(), 1e-12);
        assertEquals(Math.sin(angleRad), axis.y(), 1e-12);
        assertEquals(3, axis.along(3 * axis.x(), 3 * axis.y()), 1e-12);
        assertEquals(0, axis.across(3 * axis.x(), 3 * axis.y()), 1e-12);
    }
}
