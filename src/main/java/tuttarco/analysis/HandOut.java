package tuttarco.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;
import tuttarco.chart.Words;
import tuttarco.compare.CompareSettings;
import tuttarco.corrections.CorrectionLog;
import tuttarco.faces.Faces;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFolder;
import tuttarco.report.AnalysedTake;
import tuttarco.report.Outputs;
import tuttarco.seats.Names;
import tuttarco.take.Take;

/** Writes what a leader hands out of a take into a folder, whole or not at all. */
public final class HandOut {
    private final Analysis analysis;

    public HandOut(Analysis analysis) {
        this.analysis = analysis;
    }

    /**
     * What is handed out.
     *
     * @param marked labels of the players whose bowing is written into the part
     * @param every whether their bowing has a sign on every stroke, not only where a reader needs one
     */
    public record Wanted(Set<Outputs.Kind> kinds, List<String> marked, boolean every, Names names, Faces faces) {
        public Wanted {
            kinds = Set.copyOf(kinds);
            marked = List.copyOf(marked);
        }

        /** Whether there is anything. */
        public boolean something() {
            return !kinds.isEmpty() || !marked.isEmpty();
        }
    }

    /**
     * What was handed out.
     *
     * @param take as its outputs show it
     * @param leftFromBefore files in the folder that are called as ours are, and that this run neither wrote nor took away
     */
    public record Handed(AnalysedTake take, List<Path> leftFromBefore) {
        public Handed {
            leftFromBefore = List.copyOf(leftFromBefore);
        }

        /** What somebody must know before the folder is given away, in a sentence or two; empty if nothing. */
        public Optional<String> warning() {
            return leftFromBefore.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Words.count(leftFromBefore.size(), "file")
                            + (leftFromBefore.size() == 1 ? " lies" : " lie")
                            + " there from before and may name players or show faces: "
                            + Words.labels(
                                    leftFromBefore.stream().map(Path::toString).toList())
                            + ". Look before you hand the folder out.");
        }
    }

    /**
     * Writes it.
     *
     * @param log what was corrected
     * @param progress told what share of what takes long is done, the pictures, from 0 to 1
     * @throws InputException if the part can't be read, or the beats, as they are moved, don't fit it
     * @throws OutputException if the folder can't be written
     * @throws InterruptedException if the thread was interrupted; then the folder is as it was before
     */
    public Handed write(Uncorrected read, CorrectionLog log, Wanted wanted, Path folder, DoubleConsumer progress)
            throws InputException, NothingSeenException, OutputException, InterruptedException {
        WholeFolder.requireNoFile(folder);
        Take take = read.take();
        Called called = new Called(wanted.names(), List.of(take));
        AnalysedTake told = analysis.judged(called.read(read), called.log(log));
        Map<String, MarkedPart> marked = new LinkedHashMap<>();
        for (String label : wanted.marked()) {
            MarkedPart part = PartMarking.of(take, label).by(read, log, wanted.every(), CompareSettings.DEFAULT);
            String who = called.label(label);
            marked.put(fileName(take, who, marked), part.as(who));
        }
        requireNotItsOwn(take, folder, marked.keySet());
        List<Path> before = HandedBefore.in(folder);
        Set<Path> written = Outputs.write(
                told,
                wanted.kinds(),
                wanted.faces(),
                progress,
                into -> {
                    for (Map.Entry<String, MarkedPart> part : marked.entrySet()) {
                        part.getValue().write(into, part.getKey());
                    }
                },
                folder);
        return new Handed(
                told,
                before.stream()
                        .filter(file -> !written.contains(file) && Files.exists(folder.resolve(file)))
                        .toList());
    }

    /** As the part is called, with the player's label, as far as files may be called so. */
    private static String fileName(Take take, String label, Map<String, MarkedPart> others) {
        Path part = take.part().orElseThrow();
        String name = part.getFileName().toString();
        String title = MarkedPart.title(part).orElse(name);
        String who = label.replaceAll("[^\\p{L}\\p{N} .-]", "_");
        String first = title + HandedBefore.AS_BOWED_BY + who;
        String ending = name.substring(title.length());
        for (int count = 2; ; count++) {
            String candidate = count == 2 ? first + ending : first + " " + (count - 1) + ending;
            if (!others.containsKey(candidate)) {
                return candidate;
            }
        }
    }

    /** The part on the stand is the user's own and is never written over. */
    private static void requireNotItsOwn(Take take, Path folder, Iterable<String> names) throws OutputException {
        Optional<Path> own = take.part();
        for (String name : names) {
            Path target = folder.resolve(name);
            try {
                if (own.isPresent() && Files.exists(target) && Files.isSameFile(own.get(), target)) {
                    throw new OutputException(name + " is the take's own part; choose another folder.", null);
                }
            } catch (IOException e) {
                throw new OutputException(name + " can't be looked at; choose another folder.", e);
            }
        }
    }
}
