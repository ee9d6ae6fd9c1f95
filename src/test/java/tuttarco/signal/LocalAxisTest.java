package tuttarco.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A swing of a hertz, 30 times a second, along directions known in closed form. */
class LocalAxisTest {
    private static final LocalAxis LOCAL = new LocalAxis(1.5);
    private static final double PER_S = 30;

    private static double[] timesS(double endS) {
        double[] timesS = new double[(int) (endS * PER_S)];
        for (int i = 0; i < timesS.length; i++) {
            timesS[i] = i / PER_S;
        }
        return timesS;
    }

    private static double[] at(double[] timesS, DoubleUnaryOperator value) {
        double[] values = new double[timesS.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = value.applyAsDouble(timesS[i]);
        }
        return values;
    }

    private static double swing(double timeS) {
        return Math.sin(2 * Math.PI * timeS);
    }

    /** The axes of a swing along a direction that may turn. */
    private static Axis[] axes(double[] timesS, DoubleUnaryOperator speed, DoubleUnaryOperator angleRad) {
        Axis[] axes = LOCAL.along(
                timesS,
                at(timesS, t -> speed.applyAsDouble(t) * Math.cos(angleRad.applyAsDouble(t))),
                at(timesS, t -> speed.applyAsDouble(t) * Math.sin(angleRad.applyAsDouble(t))));
        assertEquals(timesS.length, axes.length);
        return axes;
    }

    @ParameterizedTest
    @ValueSource(doubles = {-80, -45, 0, 10, 45, 80})
    void aSwingAlongOneDirectionHasThatAxisThroughout(double angleDeg) {
        double angleRad = Math.toRadians(angleDeg);
        for (Axis axis : axes(timesS(10), LocalAxisTest::swing, t -> angleRad)) {
            assertEquals(Math.cos(angleRad), axis.x(), 1e-9);
            assertEquals(Math.sin(angleRad), axis.y(), 1e-9);
        }
    }

    /** By way of the vertical, where the principal axis by itself jumps from down to up. */
    @ParameterizedTest
    @ValueSource(doubles = {60, -120})
    void aDirectionThatTurnsSlowlyIsFollowedAndNeverJumpsToItsOpposite(double fromDeg) {
        double endS = 30;
        double[] timesS = timesS(endS);
        DoubleUnaryOperator angleRad = t -> Math.toRadians(fromDeg + 60 * t / endS);
        Axis[] axes = axes(timesS, LocalAxisTest::swing, angleRad);
        double towards =
                Math.signum(axes[0].along(Math.cos(angleRad.applyAsDouble(0)), Math.sin(angleRad.applyAsDouble(0))));
        double turnedDeg = 0;
        for (int i = 0; i < axes.length; i++) {
            double wantedRad = angleRad.applyAsDouble(timesS[i]);
            double offDeg = Math.toDegrees(
                    Math.acos(Math.min(1, towards * axes[i].along(Math.cos(wantedRad), Math.sin(wantedRad)))));
            assertTrue(offDeg < 20, offDeg + " degrees off at " + timesS[i] + " s");
            if (i > 0) {
                turnedDeg += Math.toDegrees(Math.asin(axes[i - 1].across(axes[i].x(), axes[i].y())));
            }
        }
        assertTrue(turnedDeg > 25 && turnedDeg < 61, "turned by " + turnedDeg + " degrees");
        Axis middle = axes[axes.length / 2];
        assertEquals(1, Math.abs(middle.y()), 1e-3, "half way the direction is the vertical");
    }

    @Test
    void atRestTheAxisOfTheWholeSeriesCounts() {
        double angleRad = Math.toRadians(30);
        double[] timesS = timesS(30);
        Axis[] axes = axes(timesS, t -> t < 8 ? swing(t) : 0, t -> angleRad);
        for (Axis axis : axes) {
            assertEquals(Math.cos(angleRad), axis.x(), 1e-9);
            assertEquals(Math.sin(angleRad), axis.y(), 1e-9);
        }
    }

    @Test
    void aQuiverAcrossDuringARestDoesNotTurnTheAxis() {
        double[] timesS = timesS(30);
        Axis[] axes = LOCAL.along(
                timesS, at(timesS, t -> t < 8 ? swing(t) : 0), at(timesS, t -> t < 8 ? 0 : 0.05 * swing(t)));
        assertEquals(900, axes.length);
        for (Axis axis : axes) {
            assertEquals(1, axis.x(), 1e-6);
        }
    }

    @Test
    void whereNothingEverMovesAnyAxisWillDo() {
        double[] timesS = timesS(2);
        for (Axis axis : axes(timesS, t -> 0, t -> 0)) {
            assertEquals(1, Math.hypot(axis.x(), axis.y()), 1e-12);
        }
        assertEquals(0, LOCAL.along(new double[0], new double[0], new double[0]).length);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void aWindowHasAWidth(double sigmaS) {
        assertThrows(IllegalArgumentException.class, () -> new LocalAxis(sigmaS));
    }
}
