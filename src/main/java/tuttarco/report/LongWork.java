package tuttarco.report;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.DoubleConsumer;
import tuttarco.faces.Faces;
import tuttarco.film.Progress;

/** How far the parts of writing that take long have come, all together; they are done in their order. */
final class LongWork {
    /** What takes long, weighed by the sample clip: 18 s, 8 s and 0.5 s on two cores that had other work, too. */
    enum Part {
        /** Looking for faces. */
        FACES(2),
        VIDEO(1),
        STILLS(0.1);

        private final double weight;

        Part(double weight) {
            this.weight = weight;
        }
    }

    /** Nothing takes long. */
    static final LongWork NONE = new LongWork(Set.of(), share -> {});

    private final Set<Part> parts;
    private final DoubleConsumer progress;

    private LongWork(Set<Part> parts, DoubleConsumer progress) {
        this.parts = parts;
        this.progress = progress;
    }

    /** @param progress told what share of all is done, 0 to 1 */
    static LongWork of(Set<Outputs.Kind> kinds, Faces faces, DoubleConsumer progress) {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        if (kinds.contains(Outputs.Kind.VIDEO)) {
            parts.add(Part.VIDEO);
        }
        if (kinds.contains(Outputs.Kind.REPORT)) {
            parts.add(Part.STILLS);
        }
        if (faces == Faces.BLURRED && !parts.isEmpty()) {
            parts.add(Part.FACES);
        }
        return new LongWork(parts, progress);
    }

    /** Takes the progress of one part. */
    Progress of(Part part) {
        double all = parts.stream().mapToDouble(p -> p.weight).sum();
        double before = parts.stream()
                .filter(p -> p.compareTo(part) < 0)
                .mapToDouble(p -> p.weight)
                .sum();
        return share -> progress.accept((before + part.weight * share) / all);
    }
}
