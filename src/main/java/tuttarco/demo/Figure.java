package tuttarco.demo;

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

    /** The figure of a stance; a grip out of reach is drawn back. */
    static Figure of(Stance s) {
        Posture p = s.posture();
        Limb right = Limb.reaching(p.shoulderRight().plus(s.sway()), s.grip().plus(p.wristFromGrip()), p.elbowPole());
        Vec held = right.wrist().minus(p.wristFromGrip());
        Vec frog = held.plus(s.toHand().times(GRIP_M));
        Vec tip = frog.minus(s.toHand().times(STICK_M));
        Vec leftOut = s.onShoulder() ? new Vec(0.0, -0.05, -0.045) : new Vec(-0.055, -0.045, -0.02);
        Limb left = Limb.reaching(p.shoulderLeft().plus(s.sway()), s.leftHand().plus(leftOut), p.leftPole());
        Vec hips = new Vec(0, 0, p.hipM());
        return new Figure(
                p,
                s.instrumentSway(),
                hips,
                s.chest(),
                s.head(),
                s.headTurnRad(),
                right,
                left,
                held,
                frog,
                tip,
                s.leftHand());
    }
}
