package tuttarco.demo;

/**
 * What makes a scene hard to read.
 *
 * @param shakePx standard deviation of a hand-held camera's shake, pixels
 * @param zoomDrift how much the zoom creeps in over the clip, as a share
 * @param light brightness, 1 for a well-lit room
 * @param flicker how much the light flickers, as a share, at 100 flashes a second seen by the camera's rate
 * @param noise standard deviation of the sensor's noise, shades of 255
 * @param exposure how long the shutter is open, as a share of the frame; longer than 0 blurs what moves
 * @param swayM how far players sway, metres
 * @param standM height of the music stands' upper edge, metres
 * @param passingHead whether somebody walks past before the section
 * @param unevenRate whether frames come unevenly, as phones record them in poor light
 * @param bitsPerPixel bits a pixel and frame left by the compression
 */
record Conditions(
        double shakePx,
        double zoomDrift,
        double light,
        double flicker,
        double noise,
        double exposure,
        double swayM,
        double standM,
        boolean passingHead,
        boolean unevenRate,
        double bitsPerPixel) {
    static final Conditions PLAIN = new Conditions(0, 0, 1, 0, 2, 0, 0.012, 0.72, false, false, 0.12);

    Conditions {
        if (!(shakePx >= 0 && zoomDrift >= 0 && flicker >= 0 && noise >= 0 && swayM >= 0 && standM >= 0)) {
            throw new IllegalArgumentException("amounts are not negative");
        }
        if (!(light > 0 && light <= 1 && exposure >= 0 && exposure <= 1 && bitsPerPixel > 0)) {
            throw new IllegalArgumentException("light lies in 0 to 1, exposure in 0 to 1, bits are positive");
        }
    }

    Conditions shaken(double px) {
        return new Conditions(
                px, zoomDrift, light, flicker, noise, exposure, swayM, standM, passingHead, unevenRate, bitsPerPixel);
    }

    Conditions zooming(double share) {
        return new Conditions(
                shakePx, share, light, flicker, noise, exposure, swayM, standM, passingHead, unevenRate, bitsPerPixel);
    }

    Conditions lit(double share, double flickering) {
        return new Conditions(
                shakePx,
                zoomDrift,
                share,
                flickering,
                noise,
                exposure,
                swayM,
                standM,
                passingHead,
                unevenRate,
                bitsPerPixel);
    }

    Conditions noisy(double shades) {
        return new Conditions(
                shakePx,
                zoomDrift,
                light,
                flicker,
                shades,
                exposure,
                swayM,
                standM,
                passingHead,
                unevenRate,
                bitsPerPixel);
    }

    Conditions blurred(double share) {
        return new Conditions(
                shakePx, zoomDrift, light, flicker, noise, share, swayM, standM, passingHead, unevenRate, bitsPerPixel);
    }

    Conditions swaying(double metres) {
        return new Conditions(
                shakePx,
                zoomDrift,
                light,
                flicker,
                noise,
                exposure,
                metres,
                standM,
                passingHead,
                unevenRate,
                bitsPerPixel);
    }

    Conditions behindStands(double metres) {
        return new Conditions(
                shakePx,
                zoomDrift,
                light,
                flicker,
                noise,
                exposure,
                swayM,
                metres,
                passingHead,
                unevenRate,
                bitsPerPixel);
    }

    Conditions withSomebodyPassing() {
        return new Conditions(
                shakePx, zoomDrift, light, flicker, noise, exposure, swayM, standM, true, unevenRate, bitsPerPixel);
    }

    Conditions uneven() {
        return new Conditions(
                shakePx, zoomDrift, light, flicker, noise, exposure, swayM, standM, passingHead, true, bitsPerPixel);
    }

    Conditions compressed(double bits) {
        return new Conditions(
                shakePx, zoomDrift, light, flicker, noise, exposure, swayM, standM, passingHead, unevenRate, bits);
    }
}
