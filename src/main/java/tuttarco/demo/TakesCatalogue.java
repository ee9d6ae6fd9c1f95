package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.bow.Instrument;
import tuttarco.demo.SceneCatalogue.Expected;
import tuttarco.demo.SceneCatalogue.Listed;
import tuttarco.seats.Facing;
import tuttarco.take.Bowing;

/**
 * Several takes of a passage by one section of six, for what is told over takes: short ones in a small picture, each at a
 * tempo of its own.
 */
public final class TakesCatalogue {
    private static final Picture PICTURE = Picture.of(960, 240);
    private static final int PLAYERS = 6;

    /** Places in the section, in seating order from 0. */
    private static final int DESK_1_INSIDE = 1;

    private static final int DESK_2_OUTSIDE = 2;
    private static final int DESK_2_INSIDE = 3;
    private static final int DESK_3_OUTSIDE = 4;

    /** To begin bar 4 with an up-bow, the bow is lifted after one, and lifted again after the bar. */
    private static final String LIFTED_TWICE = "d2 u2 | d1 u1 d1 u1 | d3 u1 | u1 d1 u1 d1 | d2 u2 | d1 u1 d2";

    /** Each bar has a change of bow within; no rhythm comes again soon. */
    private static final String REHEARSED = "d2 u2 | d1 u1 d2 | u3 d1 | u2 d1 u1 | d2 u1 d1 | u2 d2 "
            + "| u1 d1 u2 | d3 u1 | d1 u1 d1 u1 | d2 u2 | d1 u2 d1 | u2 d2";

    private TakesCatalogue() {}

    /** Three takes in which four of six play bar 4 as the bow comes, the other way round than marked. */
    public static List<Listed> trippingMarking() {
        List<Listed> takes = new ArrayList<>();
        for (double tempoBpm : new double[] {100, 108, 104}) {
            Section section = new Section();
            for (int place : new int[] {DESK_1_INSIDE, DESK_2_OUTSIDE, DESK_2_INSIDE, DESK_3_OUTSIDE}) {
                section.does(place, new Deviation.AsItComes(4, 4));
            }
            takes.add(section.take("lifted", takes.size() + 1, LIFTED_TWICE, tempoBpm, 320));
        }
        return takes;
    }

    /**
     * A season of six takes, better from one to the next: the outside player of desk 3 is turned in five bars, in the next
     * take in four, in the last in none; the outside player of desk 2 is late by less and less. Only in the first take the
     * inside player of desk 2 is turned in bars 2 and 3; in the fourth the inside player of desk 3 is missing.
     */
    public static List<Listed> season() {
        return List.of(
                season(1, 126, PLAYERS, Optional.of(turned(2, 3)), Optional.of(turned(6, 10)), 150),
                season(2, 132, PLAYERS, Optional.empty(), Optional.of(turned(6, 9)), 125),
                season(3, 128, PLAYERS, Optional.empty(), Optional.of(turned(6, 8)), 100),
                season(4, 138, PLAYERS - 1, Optional.empty(), Optional.of(turned(7, 8)), 75),
                season(5, 130, PLAYERS, Optional.empty(), Optional.of(turned(8, 8)), 50),
                season(6, 134, PLAYERS, Optional.empty(), Optional.empty(), 0));
    }

    private static Listed season(
            int number,
            double tempoBpm,
            int players,
            Optional<Deviation> desk2Inside,
            Optional<Deviation> desk3Outside,
            double desk2OutsideLateMs) {
        Section section = new Section();
        desk2Inside.ifPresent(d -> section.does(DESK_2_INSIDE, d));
        desk3Outside.ifPresent(d -> section.does(DESK_3_OUTSIDE, d));
        section.does(DESK_2_OUTSIDE, new Deviation.Lags(desk2OutsideLateMs));
        section.onlyFirst(players);
        return section.take("season", number, REHEARSED, tempoBpm, 310);
    }

    private static Deviation turned(int firstBar, int lastBar) {
        return new Deviation.Turned(firstBar, lastBar);
    }

    /** A section being put together: all play as marked, unless told otherwise. */
    private static final class Section {
        private final List<Cast> cast = new ArrayList<>();

        Section() {
            for (int i = 0; i < PLAYERS; i++) {
                cast.add(new Cast(Instrument.VIOLIN, Facing.CAMERA));
            }
        }

        void does(int place, Deviation deviation) {
            cast.set(place, new Cast(Instrument.VIOLIN, Facing.CAMERA, deviation));
        }

        void onlyFirst(int players) {
            cast.subList(players, cast.size()).clear();
        }

        Listed take(String name, int number, String passage, double tempoBpm, long seeds) {
            Scene scene = new Scene(
                    name + "-" + number,
                    "Lantern Street Strings, first violins: Violet Hour, take " + number,
                    cast,
                    Passage.of("Violet Hour", passage),
                    tempoBpm,
                    Bowing.UNIFIED,
                    PICTURE,
                    Conditions.EASY,
                    Scene.Sound.NONE,
                    seeds + number);
            return new Listed(scene, "", Expected.STROKES);
        }
    }
}
