package tuttarco.demo;

/** What a bow arm does other than bowing. Times and ways are chosen by eye on rendered scenes unless a source is named. */
enum Activity {
    /** Plucks beside the bridge's far side, bow in the fist with the stick upright. */
    PIZZICATO {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            Posture p = playing.posture();
            double sincePluckS = roundS % PLUCK_EVERY_S;
            double pull = Math.sin(Math.PI * Math.min(1, sincePluckS / PLUCK_S));
            Vec overStrings = p.contact()
                    .plus(p.axis().times(0.07))
                    .plus(p.front().times(0.03))
                    .plus(playing.instrumentSway());
            Vec pulled = p.toHand().times(0.045 * pull).plus(p.front().times(0.03 * pull));
            return playing.withBow(overStrings.plus(p.toHand().times(0.05)).plus(pulled), STICK_UP);
        }
    },

    /** Leans to the stand on the right, turns the page with the bow hand, comes back. */
    PAGE_TURN {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            double turned = Spell.smooth((share - 0.35) / 0.3);
            Vec from = new Vec(0.62, 0.62, 0.76);
            Vec to = new Vec(0.24, 0.60, 0.80);
            Vec page = from.towards(to, turned).plus(new Vec(0, -0.05, 0.12).times(Math.sin(Math.PI * turned)));
            return playing.leaning(new Vec(0.10, 0.22, -0.06), 0.5).withBow(page, new Vec(0.3, -0.8, -0.5));
        }
    },

    /** Bow on the knee, leans to the stand on the left, turns the page with the left hand, comes back. */
    PAGE_TURN_LEFT {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            double turned = Spell.smooth((share - 0.35) / 0.3);
            Vec from = new Vec(-0.10, 0.62, 0.80);
            Vec to = new Vec(-0.48, 0.60, 0.78);
            Vec page = from.towards(to, turned).plus(new Vec(0, -0.05, 0.12).times(Math.sin(Math.PI * turned)));
            return playing.atRest()
                    .leaning(new Vec(-0.08, 0.20, -0.05), -0.3)
                    .withBow(knee(playing), STICK_DOWN)
                    .withLeftHand(page);
        }
    },

    /** Rests with the bow on the knee, fidgets, and now and then scratches the nose. */
    IDLE {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            Stance rest = playing.atRest();
            Vec fidget = new Vec(
                    0.02 * Math.sin(2 * Math.PI * 0.31 * roundS),
                    0.03 * Math.sin(2 * Math.PI * 0.23 * roundS),
                    0.015 * Math.max(0, Math.sin(2 * Math.PI * 0.7 * roundS)));
            Vec knee = knee(playing).plus(fidget);
            double itchS = roundS % ITCH_EVERY_S - ITCH_AFTER_S;
            double raised = Spell.smooth(itchS / RAISE_S) * Spell.smooth((ITCH_S - itchS) / RAISE_S);
            Vec rub =
                    new Vec(0.012 * Math.sin(2 * Math.PI * 4 * roundS), 0, 0.008 * Math.sin(2 * Math.PI * 4 * roundS));
            Vec nose = rest.head().plus(new Vec(0.05, 0.15, -0.04)).plus(rub);
            return rest.withBow(knee.towards(nose, raised), STICK_DOWN);
        }
    },

    /** Applauds as string players do: shakes the bow lightly in the air. */
    SHAKES_BOW {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            double shake = Math.sin(2 * Math.PI * SHAKE_HZ * roundS);
            Vec hand = new Vec(0.27, 0.36, playing.posture().hipM() + 0.45 + 0.025 * shake);
            return playing.atRest().withBow(hand, new Vec(0.45, -0.45 - 0.1 * shake, -0.6 + 0.25 * shake));
        }
    },

    /** Applauds with the bow hand against the left. */
    CLAPS {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            Stance rest = playing.atRest();
            double away = 0.5 - 0.5 * Math.cos(2 * Math.PI * CLAP_HZ * roundS);
            Vec hand = rest.leftHand().plus(new Vec(0.05 + 0.11 * away, 0.03, -0.02 + 0.04 * away));
            return rest.withBow(hand, STICK_UP);
        }
    },

    /** Applauds by tapping the stand with the tip of the bow. */
    TAPS_STAND {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            double tap = Math.sin(2 * Math.PI * TAP_HZ * roundS);
            Vec hand = new Vec(0.20 + 0.01 * tap, 0.45, playing.posture().hipM() + 0.36 + 0.02 * tap);
            return playing.atRest().withBow(hand, new Vec(0.35, -0.8 + 0.05 * tap, -0.3 - 0.15 * tap));
        }
    },

    /** Applauds by patting the thigh with the left hand, the bow on the other knee. */
    PATS_THIGH {
        @Override
        Stance at(Stance playing, double share, double roundS) {
            double raised = 0.5 - 0.5 * Math.cos(2 * Math.PI * PAT_HZ * roundS);
            Vec thigh = new Vec(-0.20, 0.25, playing.posture().hipM() + 0.10 + 0.09 * raised);
            return playing.atRest().withBow(knee(playing), STICK_DOWN).withLeftHand(thigh);
        }
    };

    /** From one plucked note to the next, and how long the hand takes for one, seconds. */
    private static final double PLUCK_EVERY_S = 0.55;

    private static final double PLUCK_S = 0.30;
    /** From one itch to the next, when in that time it comes, how long it lasts and how long the hand takes up, seconds. */
    private static final double ITCH_EVERY_S = 6;

    private static final double ITCH_AFTER_S = 2;
    private static final double ITCH_S = 2.4;
    private static final double RAISE_S = 0.6;
    private static final double SHAKE_HZ = 4.5;
    private static final double CLAP_HZ = 3.2;
    private static final double TAP_HZ = 4;
    private static final double PAT_HZ = 3;
    private static final Vec STICK_DOWN = new Vec(0.15, -0.5, -0.85);
    private static final Vec STICK_UP = new Vec(-0.30, -0.15, -0.94);

    /** Where the bow hand rests. */
    private static Vec knee(Stance playing) {
        return new Vec(0.22, 0.33, playing.posture().hipM() + 0.13);
    }

    /**
     * The stance while doing this.
     *
     * @param playing the stance if the player played
     * @param share how much of its time is over, 0 to 1
     * @param roundS how far it is in what repeats itself, seconds
     */
    abstract Stance at(Stance playing, double share, double roundS);
}
