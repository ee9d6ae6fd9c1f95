package tuttarco.demo;

import tuttarco.bow.Instrument;

/**
 * How an instrument is held, in the player's own axes, metres. Lengths are those of full-size instruments; angles are
 * common practice, adjusted on rendered scenes until the arms reach.
 *
 * @param hipM height of the hips above the floor
 * @param leanM how far forward of the hips the shoulders are
 * @param tail lower end of the instrument's body
 * @param scroll upper end of the instrument
 * @param front direction in which the strings lie from the body
 * @param contact where the hair crosses the strings
 * @param toHand unit direction along the stick from the contact to the bow hand
 * @param wristFromGrip from the grip at the frog to the wrist
 * @param elbowPole the side to which the bow arm's elbow points: outward and down
 * @param leftPole the same for the left arm: down under a violin, outward beside the neck of a larger instrument
 */
record Posture(
        double hipM,
        double leanM,
        Vec tail,
        Vec scroll,
        Vec front,
        Vec contact,
        Vec toHand,
        Vec wristFromGrip,
        Vec elbowPole,
        Vec leftPole,
        double bodyLengthM,
        double bodyWidthM,
        double kneeSpreadM) {
    /** Height of the shoulder line above the hips of a seated adult, metres. */
    static final double TRUNK_M = 0.50;
    /** Half the distance between the shoulder joints, metres. */
    static final double HALF_SHOULDERS_M = 0.185;
    /** Hand to contact when playing at the frog, metres. */
    static final double FROG_M = 0.07;
    /** Hand to contact when playing at the tip, metres: hair is 0.65 m long. */
    static final double TIP_M = 0.62;

    static Posture of(Instrument instrument) {
        return switch (instrument) {
            case VIOLIN -> shoulder(0.59, 0.356, 0.21);
            case VIOLA -> shoulder(0.67, 0.41, 0.245);
            case CELLO ->
                upright(
                        0.50,
                        0.10,
                        new Vec(0.01, 0.50, 0.28),
                        new Vec(-0.12, 0.12, 1.36),
                        0.40,
                        0.07,
                        0.75,
                        0.44,
                        0.25);
            case BASS ->
                upright(
                        0.80,
                        0.16,
                        new Vec(0.03, 0.50, 0.16),
                        new Vec(-0.24, 0.20, 1.80),
                        0.80,
                        0.10,
                        1.10,
                        0.62,
                        0.24);
            case VIOL ->
                upright(
                        0.50,
                        0.10,
                        new Vec(0.01, 0.42, 0.24),
                        new Vec(-0.14, 0.08, 1.22),
                        0.42,
                        0.06,
                        0.62,
                        0.36,
                        0.21);
        };
    }

    Vec shoulderRight() {
        return new Vec(HALF_SHOULDERS_M, leanM, hipM + TRUNK_M);
    }

    Vec shoulderLeft() {
        return new Vec(-HALF_SHOULDERS_M, leanM, hipM + TRUNK_M);
    }

    /** Unit direction from tail to scroll. */
    Vec axis() {
        return scroll.minus(tail).unit();
    }

    /** Grip of the bow hand when it is {@code distanceM} from the contact. */
    Vec grip(double distanceM) {
        return contact.plus(toHand.times(distanceM));
    }

    /** The same with a violin or viola upright on the left knee. */
    Posture onTheKnee() {
        Vec foot = new Vec(-0.15, 0.30, hipM + 0.11);
        Vec up = new Vec(-0.10, -0.12, 1).unit();
        return holding(foot, foot.plus(up.times(scroll.minus(tail).length())), new Vec(0.1, 1, 0.12).unit());
    }

    /** The same with the instrument a share of the way towards where it is in another. */
    Posture towards(Posture o, double share) {
        Vec movedTail = tail.towards(o.tail, share);
        Vec movedAxis = axis().towards(o.axis(), share).unit();
        Vec movedScroll = movedTail.plus(movedAxis.times(scroll.minus(tail).length()));
        Vec movedFront = front.towards(o.front, share);
        return holding(
                movedTail,
                movedScroll,
                movedFront.minus(movedAxis.times(movedFront.dot(movedAxis))).unit());
    }

    private Posture holding(Vec newTail, Vec newScroll, Vec newFront) {
        return new Posture(
                hipM,
                leanM,
                newTail,
                newScroll,
                newFront,
                contact,
                toHand,
                wristFromGrip,
                elbowPole,
                leftPole,
                bodyLengthM,
                bodyWidthM,
                kneeSpreadM);
    }

    /** The longest distance of the hand from the contact that the arm reaches, at most {@link #TIP_M}. */
    double farthestM() {
        double farthest = FROG_M;
        for (double d = FROG_M; d <= TIP_M; d += 0.005) {
            if (grip(d).plus(wristFromGrip).minus(shoulderRight()).length() <= Limb.reachM()) {
                farthest = d;
            }
        }
        return farthest;
    }

    private static Posture shoulder(double lengthM, double bodyM, double widthM) {
        Vec tail = new Vec(-0.09, 0.10, 1.06);
        Vec axis = new Vec(-0.70, 0.70, 0.04).unit();
        Vec front = new Vec(0.28, 0.22, 0.93).unit();
        Vec contact = tail.plus(axis.times(0.58 * bodyM)).plus(front.times(0.035));
        return new Posture(
                0.50,
                0.02,
                tail,
                tail.plus(axis.times(lengthM)),
                front,
                contact,
                new Vec(0.70, 0.62, -0.36).unit(),
                new Vec(0.025, -0.055, 0.035),
                new Vec(0.70, 0.10, -0.70),
                new Vec(-0.35, 0.10, -0.95),
                bodyM,
                widthM,
                0.13);
    }

    private static Posture upright(
            double hipM,
            double leanM,
            Vec tail,
            Vec scroll,
            double contactUpM,
            double bridgeM,
            double bodyM,
            double widthM,
            double kneeM) {
        Vec axis = scroll.minus(tail).unit();
        Vec front = new Vec(0, 1, 0).minus(axis.times(axis.y())).unit();
        Vec contact = tail.plus(axis.times(contactUpM)).plus(front.times(bridgeM));
        boolean underhand = widthM < 0.40;
        return new Posture(
                hipM,
                leanM,
                tail,
                scroll,
                front,
                contact,
                new Vec(0.98, 0.06, -0.14).unit(),
                underhand ? new Vec(0.03, -0.05, -0.045) : new Vec(0.03, -0.055, 0.045),
                new Vec(0.85, -0.15, -0.45),
                new Vec(-1.0, -0.10, -0.30),
                bodyM,
                widthM,
                kneeM);
    }
}
