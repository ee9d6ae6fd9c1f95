package tuttarco.demo;

import tuttarco.bow.Instrument;

/**
 * How a player holds body, instrument and bow at one moment, in his or her own axes, metres; the arms follow from it.
 *
 * @param posture where the instrument is, among others
 * @param sway displacement of the shoulders
 * @param instrumentSway displacement of the instrument
 * @param headTurnRad turn of the head away from the chest, clockwise from above
 * @param grip where the right hand holds the bow
 * @param toHand unit direction along the stick from the tip to the hand
 * @param onShoulder whether the instrument is one of those played on the shoulder
 */
record Stance(
        Posture posture,
        Vec sway,
        Vec instrumentSway,
        double headTurnRad,
        Vec grip,
        Vec toHand,
        Vec leftHand,
        boolean onShoulder) {
    /** How far a lifted bow leaves the strings, metres. */
    private static final double LIFT_M = 0.07;
    /** Height of the head's centre above the shoulder line, metres. */
    private static final double HEAD_M = 0.235;

    /**
     * Playing.
     *
     * @param bow share of the usable bow between hand and strings: 0 at the frog, 1 at the tip
     * @param lift how far the bow has left the strings: 0 on them, 1 fully lifted
     * @param leftShift left hand along the neck, 0 to 1
     */
    static Stance playing(
            Instrument instrument, double bow, double lift, double leftShift, Vec sway, double headTurnRad) {
        Posture p = Posture.of(instrument);
        Vec instrumentSway = instrument.onShoulder() ? sway : sway.times(0.15);
        double distanceM = Posture.FROG_M + bow * (p.farthestM() - Posture.FROG_M);
        Vec lifted = p.front().times(LIFT_M * lift);
        Vec grip = p.grip(distanceM).plus(instrumentSway).plus(lifted);
        double neck = (instrument.onShoulder() ? 0.74 : 0.73) - 0.07 * leftShift;
        Vec behind = p.front().times(-0.02);
        Vec leftHand = p.tail().towards(p.scroll(), neck).plus(behind).plus(instrumentSway);
        return new Stance(p, sway, instrumentSway, headTurnRad, grip, p.toHand(), leftHand, instrument.onShoulder());
    }

    /** The stance a share of the way towards another of the same player. */
    Stance towards(Stance o, double share) {
        if (share <= 0) {
            return this;
        }
        return new Stance(
                posture.towards(o.posture, share),
                sway.towards(o.sway, share),
                instrumentSway.towards(o.instrumentSway, share),
                headTurnRad + share * (o.headTurnRad - headTurnRad),
                grip.towards(o.grip, share),
                toHand.towards(o.toHand, share).unit(),
                leftHand.towards(o.leftHand, share),
                onShoulder);
    }

    /** The same with the bow elsewhere. */
    Stance withBow(Vec newGrip, Vec newToHand) {
        return new Stance(posture, sway, instrumentSway, headTurnRad, newGrip, newToHand.unit(), leftHand, onShoulder);
    }

    /** The same with the left hand elsewhere. */
    Stance withLeftHand(Vec newLeftHand) {
        return new Stance(posture, sway, instrumentSway, headTurnRad, grip, toHand, newLeftHand, onShoulder);
    }

    /** The same with shoulders and head moved. */
    Stance leaning(Vec by, double headTurnByRad) {
        return new Stance(
                posture,
                sway.plus(by),
                instrumentSway.plus(onShoulder ? by : Vec.NONE),
                headTurnRad + headTurnByRad,
                grip,
                toHand,
                onShoulder ? leftHand.plus(by) : leftHand,
                onShoulder);
    }

    /** The same with a violin or viola upright on the left knee; larger instruments stay where they are. */
    Stance atRest() {
        if (!onShoulder) {
            return this;
        }
        Posture lap = posture.onTheKnee();
        Vec neck = lap.tail().towards(lap.scroll(), 0.7);
        return new Stance(lap, sway, Vec.NONE, 0, grip, toHand, neck, onShoulder);
    }

    /** Centre of the head. */
    Vec head() {
        return chest().plus(new Vec(onShoulder ? -0.02 : 0.015, 0.03, HEAD_M)).plus(sway.times(0.25));
    }

    Vec chest() {
        return new Vec(0, posture.leanM(), posture.hipM() + Posture.TRUNK_M).plus(sway);
    }
}
