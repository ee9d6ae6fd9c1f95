package tuttarco.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tuttarco.chart.Words;
import tuttarco.seats.Player;

/** {@code sheets/NAME.html} and {@code sheets/NAME.pdf}: one page a player; {@code sheets/all.pdf}: all of them, to print. */
public final class PlayerSheets implements Output {
    private static final String ALL = "all.pdf";

    /** A shorter name could be one that a system keeps for itself, such as "con" or "nul", or be that of all. */
    private static final int SHORTEST_NAME = 5;

    /** Longest name without ending, so that it fits every file system. */
    private static final int LONGEST_NAME = 60;

    @Override
    public String name() {
        return "sheets";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException, InterruptedException {
        Path sheets = Files.createDirectories(folder.resolve(name()));
        Set<String> names = new HashSet<>();
        List<SheetLayout> all = new ArrayList<>();
        for (Player player : take.comparison().players()) {
            if (Thread.interrupted()) {
                throw new InterruptedException("writing was stopped");
            }
            SheetModel sheet = new SheetWords(take, player).model();
            String name = fileName(player.label(), names);
            SheetLayout layout = SheetLayout.of(sheet);
            SheetPage.write(sheet, layout, sheets.resolve(name + ".html"));
            SheetPdf.write(sheet.head().title(), List.of(layout), sheets.resolve(name + ".pdf"));
            all.add(layout);
        }
        SheetPdf.write(Words.plain(take.take().title()), all, sheets.resolve(ALL));
    }

    /** The label in letters and digits that every file system takes, with a number where another player has the name. */
    static String fileName(String label, Set<String> taken) {
        String plain = Normalizer.normalize(label, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String cut = plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
        String base = cut.length() < SHORTEST_NAME ? "player" + (cut.isEmpty() ? "" : "-" + cut) : cut;
        String name = base;
        for (int count = 2; !taken.add(name); count++) {
            name = base + "-" + count;
        }
        return name;
    }
}
