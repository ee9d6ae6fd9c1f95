package tuttarco.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import tuttarco.files.FilesBelow;
import tuttarco.files.OutputException;
import tuttarco.report.Outputs;

/** Files in a folder that are called as what is handed out is called: an earlier run may have left them. */
final class HandedBefore {
    /** Stands in the name of every part with somebody's bowing. */
    static final String AS_BOWED_BY = " as bowed by ";

    private HandedBefore() {}

    /**
     * They, relative to the folder, in order; none where there is no folder.
     *
     * @throws OutputException if the folder can't be looked at
     */
    static List<Path> in(Path folder) throws OutputException {
        List<Path> files = new ArrayList<>();
        try {
            for (Path ours : ours(folder)) {
                Path name = folder.relativize(ours);
                FilesBelow.of(ours).forEach(file -> files.add(name.resolve(file)));
            }
        } catch (IOException e) {
            throw new OutputException(folder + " can't be looked at; choose another folder.", e);
        }
        return files.stream().sorted().toList();
    }

    private static List<Path> ours(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        Set<String> names = Outputs.names();
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> {
                        String name = path.getFileName().toString();
                        return names.contains(name) || name.contains(AS_BOWED_BY);
                    })
                    .toList();
        }
    }
}
