package tuttarco.demo;

import java.awt.Color;

/** Stands before the section, back to the camera, and beats four in a bar with both arms, the right with a baton. */
record Conductor(Vec floor, double tempoBpm) {
    /** Where a conductor stands, before the middle of the front desks, metres (chosen: the arms cross two players' seats). */
    private static final Vec PODIUM = new Vec(0, -2.0, 0);

    private static final Color COAT = new Color(0x2B2C31);
    private static final Color SKIN = new Color(0xD9A585);
    private static final Color HAIR = new Color(0x8C8A88);
    private static final Color BATON = new Color(0xF1EBDD);
    /** Joints of someone standing 1.78 m tall, metres (anthropometric tables). */
    private static final Vec HEAD = new Vec(0, 0.03, 1.66);

    private static final Vec SHOULDER = new Vec(0.19, 0, 1.43);
    private static final Vec HIP = new Vec(0.10, 0, 0.93);
    private static final double BATON_M = 0.36;
    /** Where the right hand is at the four beats of a bar: down, in, out, up (common practice, no source). */
    private static final Vec[] BEATS = {
        new Vec(0.48, 0.24, 1.12), new Vec(0.36, 0.30, 1.16), new Vec(0.66, 0.14, 1.22), new Vec(0.52, 0.22, 1.26)
    };
    /** How far the hand springs up after each beat, metres (chosen by eye). */
    private static final double[] SPRINGS_M = {0.12, 0.12, 0.12, 0.30};

    static Conductor of(Scene scene) {
        return new Conductor(PODIUM, scene.tempoBpm());
    }

    /** The right hand at a time, in axes of the room about the conductor's feet. */
    Vec hand(double timeS) {
        double beats = (timeS - Scene.LEAD_IN_S) * tempoBpm / 60;
        int beat = Math.floorMod((int) Math.floor(beats), BEATS.length);
        double since = beats - Math.floor(beats);
        return BEATS[beat]
                .towards(BEATS[(beat + 1) % BEATS.length], Spell.smooth(since))
                .plus(new Vec(0, 0, SPRINGS_M[beat] * Math.sin(Math.PI * since)));
    }

    void paint(Brush brush, double timeS) {
        for (boolean right : new boolean[] {true, false}) {
            Axes side = new Axes(floor, 0, !right);
            brush.limb(side.room(HIP), side.room(new Vec(0.12, 0, 0.05)), 0.17, 0.10, COAT, 0);
            brush.limb(side.room(SHOULDER.plus(new Vec(-0.03, 0, -0.03))), side.room(HIP), 0.15, 0.19, COAT, 0.02);
            Limb arm = Limb.reaching(SHOULDER, hand(timeS), new Vec(0.6, -0.3, -0.7));
            brush.limb(side.room(arm.shoulder()), side.room(arm.elbow()), 0.12, 0.09, COAT, 0);
            brush.limb(side.room(arm.elbow()), side.room(arm.wrist()), 0.09, 0.06, COAT, 0);
            Vec fingers = arm.wrist().plus(new Vec(-0.02, 0.08, 0.02));
            brush.limb(side.room(arm.wrist()), side.room(fingers), 0.06, 0.05, SKIN, 0.30);
            if (right) {
                Vec point = fingers.plus(new Vec(-0.2, 0.5, 0.8).unit().times(BATON_M));
                brush.line(side.room(fingers), side.room(point), 0.012, BATON, 0);
            }
        }
        brush.limb(at(new Vec(0, 0, 1.34)), at(new Vec(0, 0, 0.98)), 0.34, 0.30, COAT, 0.03);
        brush.limb(at(HEAD.minus(new Vec(0, 0.04, 0.09))), at(new Vec(0, 0, 1.43)), 0.11, 0.12, SKIN, 0.01);
        brush.ball(at(HEAD), 0.08, 0.115, SKIN, 0);
        brush.ball(at(HEAD.plus(new Vec(0, -0.03, 0.03))), 0.095, 0.11, HAIR, 0.02);
        brush.flush();
    }

    private Vec at(Vec own) {
        return floor.plus(own);
    }
}
