package tuttarco.demo;

import java.util.List;

/** A player's bow over the whole clip: travels that follow each other without gaps. */
record BowMotion(List<Travel> travels) {
    BowMotion {
        travels = List.copyOf(travels);
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
