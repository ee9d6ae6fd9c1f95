package tuttarco.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import tuttarco.seats.Player;

/** {@code sheets/NAME.html} and {@code sheets/NAME.pdf}: one page a player. */
public final class PlayerSheets implements Output {
    /** Longest name without ending, so that it fits every file system. */
    private static final int LONGEST_NAME = 60;

    @Override
    public String name() {
        return "sheets";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        Path sheets = Files.createDirectories(folder.resolve(name()));
        Set<String> names = new HashSet<>();
        for (Player player : take.comparison().players()) {
            SheetModel sheet = new SheetWords(take, player).model();
            String name = fileName(player.label(), names);
            SheetPage.write(sheet, sheets.resolve(name + ".html"));
            SheetPdf.write(sheet, sheets.resolve(name + ".pdf"));
        }
    }

    /** The label in letters and digits that every file system takes, with a number where another player has the name. */
    static String fileName(String label, Set<String> taken) {
        String plain = Normalizer.normalize(label, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String cut = plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
        // some systems keep short names such as "con" or "nul" for themselves
        String base = cut.length() < 5 ? "player" + (cut.isEmpty() ? "" : "-" + cut) : cut;
        String name = base;
        for (int count = 2; !taken.add(name); count++) {
            name = base + "-" + count;
        }
        return name;
    }
}
