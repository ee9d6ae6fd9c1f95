package tuttarco.demo;

/** Two-link inverse kinematics: where the elbow goes when shoulder and wrist are given. */
record Limb(Vec shoulder, Vec elbow, Vec wrist) {
    /** Upper arm of an adult, metres (anthropometric tables give 0.28 to 0.34). */
    static final double UPPER_M = 0.30;
    /** Forearm to the wrist of an adult, metres (anthropometric tables give 0.24 to 0.28). */
    static final double FORE_M = 0.27;
    /** An arm is never drawn quite straight: share of its full length that it may span. */
    static final double STRAIGHTEST = 0.985;

    /** Farthest a wrist may be from its shoulder, metres. */
    static double reachM() {
        return STRAIGHTEST * (UPPER_M + FORE_M);
    }

    /**
     * Places the elbow on the side {@code pole} points to. A wrist out of reach is drawn back along the line to the
     * shoulder.
     */
    static Limb reaching(Vec shoulder, Vec wrist, Vec pole) {
        Vec span = wrist.minus(shoulder);
        double spanM = Math.min(span.length(), reachM());
        Vec along = span.unit();
        double upperShareM = (UPPER_M * UPPER_M - FORE_M * FORE_M + spanM * spanM) / (2 * spanM);
        double asideM = Math.sqrt(Math.max(0, UPPER_M * UPPER_M - upperShareM * upperShareM));
        Vec aside = pole.minus(along.times(pole.dot(along))).unit();
        Vec elbow = shoulder.plus(along.times(upperShareM)).plus(aside.times(asideM));
        return new Limb(shoulder, elbow, shoulder.plus(along.times(spanM)));
    }
}
