package tuttarco.tracks;

/**
 * Motion of the bow arm between two frames.
 *
 * @param vx speed to the picture's right relative to the body, shoulder widths per second; {@code vy} downwards
 * @param placeX where in the seat box the moving arm is, share of its width; {@code placeY} of its height
 */
record ArmMotion(double vx, double vy, double placeX, double placeY) {}
