package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;

/** A player's bow over the whole clip: travels that follow each other without gaps. */
record BowMotion(List<Travel> travels) {
    BowMotion {
        travels = List.copyOf(travels);
    }

    /** Another take of the same music from a time on, which is set to where a span begins in both. */
    BowMotion cutTo(BowMotion take, double fromS) {
        double atS = at(fromS).startS();
        List<Travel> cut = new ArrayList<>();
        travels.stream().filter(t -> t.startS() < atS).forEach(cut::add);
        take.travels.stream().filter(t -> t.startS() >= atS).forEach(cut::add);
        return new BowMotion(cut);
    }

    /**
     * The same with all places between two times, inclusive, moved towards another place, so that strokes are shorter.
     *
     * @param share what is left of the distance to that place
     * @throws IllegalArgumentException if a stroke on the way into it or out of it would go the other way
     */
    BowMotion drawn(double share, double towards, double fromS, double toS) {
        return new BowMotion(travels.stream()
                .map(t -> {
                    double from = drawn(t.from(), share, towards, fromS <= t.startS() && t.startS() <= toS);
                    double to = drawn(t.to(), share, towards, fromS <= t.endS() && t.endS() <= toS);
                    if ((to - from) * (t.to() - t.from()) < 0) {
                        throw new IllegalArgumentException("the bow turns round at " + t.startS() + " s");
                    }
                    return new Travel(t.startS(), t.endS(), t.kind(), from, to, t.lifted());
                })
                .toList());
    }

    private static double drawn(double place, double share, double towards, boolean within) {
        return within ? towards + share * (place - towards) : place;
    }

    /** What the bow does at a time; before the first travel the first, after the last the last. */
    Travel at(double timeS) {
        for (Travel travel : travels) {
            if (timeS < travel.endS()) {
                return travel;
            }
        }
        return travels.get(travels.size() - 1);
    }
}
