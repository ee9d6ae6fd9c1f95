package tuttarco.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.compare.CompareSettings;
import tuttarco.corrections.CorrectionLog;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFolder;
import tuttarco.report.AnalysedTake;
import tuttarco.report.Output;
import tuttarco.report.Outputs;
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
     * @param report the page and its charts
     * @param data tables, and the results in one file
     * @param marked labels of the players whose bowing is written into the part
     * @param every whether their bowing has a sign on every stroke, not only where a reader needs one
     * @param byDesk whether players are called by their desk and place instead of their labels
     */
    public record Wanted(boolean report, boolean data, List<String> marked, boolean every, boolean byDesk) {
        public Wanted {
            marked = List.copyOf(marked);
        }

        /** Whether there is anything. */
        public boolean something() {
            return report || data || !marked.isEmpty();
        }

        private List<Output> outputs() {
            List<Output> outputs = new ArrayList<>();
            if (report) {
                outputs.addAll(Outputs.page());
            }
            if (data) {
                outputs.addAll(Outputs.data());
            }
            return outputs;
        }
    }

    /**
     * Writes it.
     *
     * @throws InputException if the log of corrections or the part can't be read
     * @throws OutputException if the folder can't be written
     * @throws InterruptedException if the thread was interrupted; then the folder is as it was before
     */
    public void write(Uncorrected read, Wanted wanted, Path folder)
            throws InputException, NothingSeenException, OutputException, InterruptedException {
        WholeFolder.requireNoFile(folder);
        ByDesk byDesk = new ByDesk(read.take().players());
        CorrectionLog log = CorrectionLog.of(read.take().file());
        Uncorrected told = wanted.byDesk() ? byDesk.of(read) : read;
        CorrectionLog toldLog = wanted.byDesk() ? byDesk.of(log) : log;
        AnalysedTake analysed = analysis.judged(told, toldLog);
        List<String> labels =
                wanted.byDesk() ? wanted.marked().stream().map(byDesk::label).toList() : wanted.marked();
        Map<String, MarkedPart> marked = new LinkedHashMap<>();
        for (String label : labels) {
            MarkedPart part =
                    PartMarking.of(told.take(), label).by(told, toldLog, wanted.every(), CompareSettings.DEFAULT);
            marked.put(fileName(told.take(), label, marked), part);
        }
        requireNotItsOwn(told.take(), folder, marked.keySet());
        Outputs.write(
                analysed,
                wanted.outputs(),
                into -> {
                    for (Map.Entry<String, MarkedPart> part : marked.entrySet()) {
                        part.getValue().write(into, part.getKey());
                    }
                },
                folder);
    }

    /** As the part is called, with the player's label, as far as files may be called so. */
    private static String fileName(Take take, String label, Map<String, MarkedPart> others) {
        Path part = take.part().orElseThrow();
        String name = part.getFileName().toString();
        String title = MarkedPart.title(part).orElse(name);
        String who = label.replaceAll("[^\\p{L}\\p{N} .-]", "_");
        String first = title + " as bowed by " + who;
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
