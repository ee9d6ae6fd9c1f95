package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tuttarco.bow.BowDirection;

/** From the part to what one player plays: the marking, with his or her deviations and small unevenness. */
final class NotePlanner {
    /** Standard deviation of a bow change about its time among practised players, seconds (chosen, 10 ms). */
    private static final double UNEVEN_S = 0.010;
    /** Unevenness beyond this many standard deviations is cut off, so that strokes keep their order. */
    private static final double MOST_UNEVEN = 2.5;
    /** Shortest and longest stroke of a player who bows freely, seconds (chosen on rendered scenes). */
    private static final double FREE_SHORTEST_S = 0.6;

    private static final double FREE_LONGEST_S = 2.2;

    private final Random random;

    NotePlanner(long seed) {
        this.random = new Random(seed);
    }

    List<Note> plan(Tempo tempo, List<Deviation> deviations) {
        List<Note> notes = marked(tempo);
        for (Deviation deviation : deviations) {
            if (!(deviation instanceof Deviation.Lags)) {
                notes = changed(notes, deviation);
            }
        }
        return uneven(notes, Deviation.lagS(deviations));
    }

    private static List<Note> marked(Tempo tempo) {
        List<Note> notes = new ArrayList<>();
        for (Tempo.Played played : tempo.strokes()) {
            BowDirection direction = played.stroke().direction();
            int bar = played.stroke().start().barIndex();
            notes.add(new Note(played.startS(), played.endS(), direction, bar, false, false));
        }
        return retaken(notes);
    }

    /** With the bow set again wherever it goes the same way twice. */
    private static List<Note> retaken(List<Note> notes) {
        List<Note> retaken = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            Note note = notes.get(i);
            boolean again = i + 1 < notes.size()
                    && adjoin(note, notes.get(i + 1))
                    && notes.get(i + 1).direction() == note.direction();
            retaken.add(note.going(note.direction(), again));
        }
        return retaken;
    }

    private List<Note> changed(List<Note> notes, Deviation deviation) {
        List<Note> changed = new ArrayList<>();
        if (deviation instanceof Deviation.Free) {
            return free(notes);
        }
        if (deviation instanceof Deviation.AsItComes asItComes) {
            return asItComes(notes, asItComes);
        }
        for (Note note : notes) {
            int bar = note.barIndex() + 1;
            if (deviation instanceof Deviation.Turned turned && turned.firstBar() <= bar && bar <= turned.lastBar()) {
                changed.add(note.going(note.direction().opposite(), note.retaken()));
            } else if (deviation instanceof Deviation.Tremolo t && t.firstBar() <= bar && bar <= t.lastBar()) {
                split(note, Math.max(1, (int) Math.round(note.lengthS() * t.strokesPerS())), changed);
            } else if (!(deviation instanceof Deviation.Silent s && s.firstBar() <= bar && bar <= s.lastBar())
                    && !(deviation instanceof Deviation.Does d && d.firstBar() <= bar && bar <= d.lastBar())) {
                changed.add(note);
            }
        }
        return changed;
    }

    private static List<Note> asItComes(List<Note> notes, Deviation.AsItComes in) {
        List<Note> changed = new ArrayList<>();
        for (Note note : notes) {
            int bar = note.barIndex() + 1;
            boolean there = !changed.isEmpty() && in.firstBar() <= bar && bar <= in.lastBar();
            BowDirection direction =
                    there ? changed.get(changed.size() - 1).direction().opposite() : note.direction();
            changed.add(note.going(direction, false));
        }
        return retaken(changed);
    }

    private static void split(Note note, int pieces, List<Note> to) {
        BowDirection direction = note.direction();
        for (int i = 0; i < pieces; i++) {
            double startS = note.startS() + note.lengthS() * i / pieces;
            double endS = note.startS() + note.lengthS() * (i + 1) / pieces;
            to.add(new Note(startS, endS, direction, note.barIndex(), false, true));
            direction = direction.opposite();
        }
    }

    /** Sounding stretches stay as they are; within them the bow changes anywhere. */
    private List<Note> free(List<Note> notes) {
        List<Note> free = new ArrayList<>();
        BowDirection direction = random.nextBoolean() ? BowDirection.DOWN : BowDirection.UP;
        for (int i = 0; i < notes.size(); ) {
            int last = i;
            while (last + 1 < notes.size() && adjoin(notes.get(last), notes.get(last + 1))) {
                last++;
            }
            double endS = notes.get(last).endS();
            double atS = notes.get(i).startS();
            while (atS < endS) {
                double next = atS + FREE_SHORTEST_S + random.nextDouble() * (FREE_LONGEST_S - FREE_SHORTEST_S);
                double nextS = next > endS - FREE_SHORTEST_S ? endS : next;
                free.add(new Note(atS, nextS, direction, notes.get(i).barIndex(), false, false));
                direction = direction.opposite();
                atS = nextS;
            }
            i = last + 1;
        }
        return free;
    }

    private List<Note> uneven(List<Note> notes, double lagS) {
        List<Note> shifted = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            Note note = notes.get(i);
            boolean joined = i > 0 && adjoin(notes.get(i - 1), note);
            double startS = joined ? shifted.get(i - 1).endS() : note.startS() + lagS + unevenS();
            shifted.add(note.from(startS).until(note.endS() + lagS + unevenS()));
        }
        return shifted;
    }

    /** Beyond this no bow change lies from its time, seconds. */
    static double mostUnevenS() {
        return MOST_UNEVEN * UNEVEN_S;
    }

    private double unevenS() {
        return unevenS(random);
    }

    /** How far from its time one change of a practised player lies, seconds. */
    static double unevenS(Random random) {
        return UNEVEN_S * Math.max(-MOST_UNEVEN, Math.min(MOST_UNEVEN, random.nextGaussian()));
    }

    static boolean adjoin(Note first, Note second) {
        return adjoin(first.endS(), second.startS());
    }

    private static boolean adjoin(double endS, double startS) {
        return Math.abs(startS - endS) < 1e-6;
    }
}
