package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import tuttarco.bow.BowDirection;
import tuttarco.strokes.StrokeKind;

/**
 * From strokes in time to the bow's way: how much bow each takes, and where it lies, so that the next has room. Longer
 * strokes take more bow; a retake brings the bow back through the air.
 */
final class BowPlanner {
    /** Share of the usable bow that a stroke takes: a little, and more for each second (chosen on rendered scenes). */
    private static final double LEAST_SHARE = 0.20;

    private static final double SHARE_PER_S = 0.40;
    private static final double MOST_SHARE = 0.95;
    /** The same for one stroke of a tremolo: some five centimetres. */
    private static final double TREMOLO_SHARE = 0.1;
    /** Share of the usable bow a second beyond which a player would not hurry. */
    private static final double FASTEST_PER_S = 1.9;
    /** Longest a retake takes, seconds, and as a share of the stroke it shortens (chosen on rendered scenes). */
    private static final double RETAKE_S = 0.28;

    private static final double RETAKE_SHARE = 0.35;
    /** Longest time a bow takes to be set anew in a rest, seconds. */
    private static final double SET_S = 0.45;

    private final List<Travel> travels = new ArrayList<>();
    private double atS;
    private double place;

    private BowPlanner() {}

    /** Strokes must be in order; spans where the bow rests fill the clip from 0 to {@code endS}. */
    static BowMotion plan(List<Note> notes, double endS) {
        BowPlanner planner = new BowPlanner();
        planner.place = notes.isEmpty() ? 0.1 : start(notes, 0);
        for (int i = 0; i < notes.size(); i++) {
            planner.play(notes, i);
        }
        planner.restUntil(endS);
        return new BowMotion(planner.travels);
    }

    private void play(List<Note> notes, int i) {
        Note note = notes.get(i);
        if (note.startS() > atS) {
            double set = start(notes, i);
            double backS = Math.min(SET_S, 0.6 * (note.startS() - atS));
            restUntil(note.startS() - backS);
            add(note.startS(), StrokeKind.STILL, set, set != place);
        }
        double liftS = note.retaken() ? Math.min(RETAKE_S, RETAKE_SHARE * note.lengthS()) : 0;
        add(note.endS() - liftS, note.kind(), end(notes, i), false);
        if (note.retaken()) {
            add(note.endS(), StrokeKind.STILL, start(notes, i + 1), true);
        }
    }

    /** Where the stroke ends: as far as it likes, but so that what follows has most of its room. */
    private double end(List<Note> notes, int i) {
        Note note = notes.get(i);
        double own = share(note);
        double following = follows(notes, i) ? share(notes.get(i + 1)) : 0;
        boolean same = follows(notes, i) && notes.get(i + 1).direction() == note.direction();
        double most = FASTEST_PER_S * note.lengthS();
        double room = note.direction() == BowDirection.DOWN ? 1 - place : place;
        double length = same ? Math.min(own, room * own / (own + following)) : Math.min(own, room);
        double leftForNext = (1 - room) + length;
        if (!same && leftForNext < 0.9 * following) {
            length += 0.9 * following - leftForNext;
        }
        length = Math.min(Math.min(length, most), room);
        return note.direction() == BowDirection.DOWN ? place + length : place - length;
    }

    /** Where a stroke is set on the strings when the bow is free to choose. */
    private static double start(List<Note> notes, int i) {
        double own = share(notes.get(i));
        if (follows(notes, i) && notes.get(i + 1).direction() == notes.get(i).direction()) {
            own = Math.min(MOST_SHARE, own + share(notes.get(i + 1)));
        }
        double margin = Math.min(0.12, (1 - own) / 2);
        return notes.get(i).direction() == BowDirection.DOWN ? margin : Math.min(1, own + margin);
    }

    private static boolean follows(List<Note> notes, int i) {
        return i + 1 < notes.size() && !notes.get(i).retaken() && NotePlanner.adjoin(notes.get(i), notes.get(i + 1));
    }

    private static double share(Note note) {
        return note.tremolo() ? TREMOLO_SHARE : Math.min(MOST_SHARE, LEAST_SHARE + SHARE_PER_S * note.lengthS());
    }

    private void restUntil(double endS) {
        if (endS > atS) {
            add(endS, StrokeKind.STILL, place, false);
        }
    }

    private void add(double endS, StrokeKind kind, double to, boolean lifted) {
        travels.add(new Travel(atS, endS, kind, place, to, lifted));
        atS = endS;
        place = to;
    }
}
