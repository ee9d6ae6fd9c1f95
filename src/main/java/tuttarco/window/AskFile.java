package tuttarco.window;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks the user for a file that is there. */
@FunctionalInterface
interface AskFile {
    /**
     * What is asked for.
     *
     * @param kind in a word or two, for the list of kinds
     * @param endings without the dot
     */
    record Kind(String title, String kind, String... endings) {}

    /** The file, or nothing if the user thinks better of it. */
    Optional<Path> ask(Component over, Kind kind, Optional<Path> folder);

    /** Asks in a dialog. */
    static Optional<Path> inDialog(Component over, Kind kind, Optional<Path> folder) {
        JFileChooser chooser = new JFileChooser();
        folder.map(Path::toFile).ifPresent(chooser::setCurrentDirectory);
        chooser.setDialogTitle(kind.title());
        chooser.setFileFilter(new FileNameExtensionFilter(kind.kind(), kind.endings()));
        return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }
}
