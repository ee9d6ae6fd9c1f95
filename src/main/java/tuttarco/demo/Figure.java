package tuttarco.demo;

import tuttarco.bow.Instrument;

/**
 * One player at one moment, in his or her own axes, metres: the joints everything is drawn from.
 *
 * @param grip where the right hand holds the bow
 * @param frog lower end of the stick
 * @param tip upper end of the stick
 */
record Figure(
        Posture posture,
        Vec sway,
        Vec hips,
        Vec chest,
        Vec head,
        double headTurnRad,
        Limb right,
        Limb left,
        Vec grip,
        Vec frog,
        Vec tip,
        Vec leftHand) {
    /** Length of the stick from button to tip, metres. */
    private static final double STICK_M = 0.73;
    /** From the button to the middle of the grip, metres. */
    private static final double GRIP_M = 0.05;
    /** How far a lifted bow leaves the strings, metres. */
    private static final double LIFT_M = 0.07;
    /** Height of the head's centre above the shoulder line, metres. */
    private static final double HEAD_M = 0.235;

    /**
     * @param bow share of the usable bow between hand and strings: 0 at the frog, 1 at the tip
     * @param lift how far the bow has left the strings: 0 on them, 1 fully lifted
     * @param leftShift left hand along the neck, 0 to 1
     * @param sway displacement of the shoulders, metres
     * @param headTurnRad turn of the head away from the chest, clockwise from above
     */
    static Figure of(Instrument instrument, double bow, double lift, double leftShift, Vec sway, double headTurnRad) {
        Posture p = Posture.of(instrument);
        Vec instrumentSway = instrument.onShoulder() ? sway : sway.times(0.15);
        double distanceM = Posture.FROG_M + bow * (p.farthestM() - Posture.FROG_M);
        Vec lifted = p.front().times(LIFT_M * lift);
        Vec grip = p.grip(distanceM).plus(instrumentSway).plus(lifted);
        Limb right = Limb.reaching(p.shoulderRight().plus(sway), grip.plus(p.wristFromGrip()), p.elbowPole());
        Vec held = right.wrist().minus(p.wristFromGrip());
        Vec frog = held.plus(p.toHand().times(GRIP_M));
        Vec tip = frog.minus(p.toHand().times(STICK_M));
        double neck = (instrument.onShoulder() ? 0.74 : 0.73) - 0.07 * leftShift;
        Vec behind = p.front().times(-0.02);
        Vec leftHand = p.tail().towards(p.scroll(), neck).plus(behind).plus(instrumentSway);
        Vec leftOut = instrument.onShoulder() ? new Vec(0.0, -0.05, -0.045) : new Vec(-0.055, -0.045, -0.02);
        Limb left = Limb.reaching(p.shoulderLeft().plus(sway), leftHand.plus(leftOut), p.leftPole());
        Vec hips = new Vec(0, 0, p.hipM());
        Vec chest = new Vec(0, p.leanM(), p.hipM() + Posture.TRUNK_M).plus(sway);
        Vec head = chest.plus(new Vec(instrument.onShoulder() ? -0.02 : 0.015, 0.03, HEAD_M))
                .plus(sway.times(0.25));
        return new Figure(p, instrumentSway, hips, chest, head, headTurnRad, right, left, held, frog, tip, leftHand);
    }
}
