package tuttarco.demo;

/**
 * What makes a clip hard to read.
 *
 * @param shakePx standard deviation of a hand-held camera's wander, pixels
 * @param move how the camera pans, zooms or cuts
 * @param light brightness as a share of full light
 * @param flicker depth of the light's flicker as a share
 * @param noise standard deviation of the sensor's noise, grey levels of 255
 * @param subFrames moments averaged in each frame; 1 is without motion blur
 * @param swayM how far the shoulders sway, metres
 */
record Conditions(
        double shakePx,
        CameraMove move,
        double light,
        double flicker,
        double noise,
        int subFrames,
        double swayM,
        Obstacle obstacle) {
    /** What stands between camera and players. */
    enum Obstacle {
        /** Stands low enough that the arms stay free. */
        NONE,
        /** Stands set high, in front of the hands. */
        HIGH_STANDS,
        /** Someone's head and shoulders go past, close to the camera. */
        PASSING_HEAD,
        /** A conductor beats time before the players in the middle. */
        CONDUCTOR
    }

    static final Conditions EASY = new Conditions(0, CameraMove.NONE, 1, 0, 2, 1, 0.012, Obstacle.NONE);

    Conditions {
        if (!(shakePx >= 0 && shakePx <= 100)) {
            throw new IllegalArgumentException("a shake has 0 to 100 pixels, not " + shakePx);
        }
        if (!(light > 0 && light <= 1) || !(flicker >= 0 && flicker < 1)) {
            throw new IllegalArgumentException("light and flicker are shares, not " + light + " and " + flicker);
        }
        if (!(noise >= 0 && noise <= 100)) {
            throw new IllegalArgumentException("noise has 0 to 100 grey levels, not " + noise);
        }
        if (subFrames < 1 || subFrames > 32) {
            throw new IllegalArgumentException("1 to 32 moments make a frame, not " + subFrames);
        }
        if (!(swayM >= 0 && swayM <= 0.3)) {
            throw new IllegalArgumentException("a body sways by 0 to 0.3 metres, not " + swayM);
        }
    }

    Conditions shaken(double px) {
        return new Conditions(px, move, light, flicker, noise, subFrames, swayM, obstacle);
    }

    Conditions moved(CameraMove newMove) {
        return new Conditions(shakePx, newMove, light, flicker, noise, subFrames, swayM, obstacle);
    }

    Conditions lit(double newLight, double newFlicker) {
        return new Conditions(shakePx, move, newLight, newFlicker, noise, subFrames, swayM, obstacle);
    }

    Conditions noisy(double newNoise) {
        return new Conditions(shakePx, move, light, flicker, newNoise, subFrames, swayM, obstacle);
    }

    Conditions blurred(int newSubFrames) {
        return new Conditions(shakePx, move, light, flicker, noise, newSubFrames, swayM, obstacle);
    }

    Conditions swaying(double newSwayM) {
        return new Conditions(shakePx, move, light, flicker, noise, subFrames, newSwayM, obstacle);
    }

    Conditions behind(Obstacle newObstacle) {
        return new Conditions(shakePx, move, light, flicker, noise, subFrames, swayM, newObstacle);
    }
}
