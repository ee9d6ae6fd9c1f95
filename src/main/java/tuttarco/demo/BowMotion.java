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
     * The same with all places between two times, inclusive, drawn together and moved.
     *
     * @param share how much of the bow is left
     * @param frog the place that is taken for the frog
     * @throws IllegalArgumentException if a stroke would go the other way on the way into it or out of it, or off the bow
     */
    BowMotion drawn(double share, double frog, double fromS, double toS) {
        return new BowMotion(travels.stream()
                .map(t -> {
                    double from = fromS <= t.startS() && t.startS() <= toS ? frog + share * t.from() : t.from();
                    double to = fromS <= t.endS() && t.endS() <= toS ? frog + share * t.to() : t.to();
                    if ((to - from) * (t.to() - t.from()) < 0 || to < 0 || to > 1) {
                        throw new IllegalArgumentException(
                                "no bow goes from " + from + " to " + to + " at " + t.startS() + " s");
                    }
                    return new Travel(t.startS(), t.endS(), t.kind(), from, to, t.lifted());
                })
                .toList());
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
