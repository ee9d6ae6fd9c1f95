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
