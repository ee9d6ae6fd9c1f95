package tuttarco.take;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder with what a take names, and a good take to start from. */
final class TakeFolders {
    static final String GOOD = """
            {
              "version": 1,
              "title": "Serenade, bars 17 to 32",
              "video": "strings.mp4",
              "bowing": "unified",
              "players": [
                {"label": "Desk 1 outside", "desk": 1, "place": "outside", "instrument": "violin",
                 "seat": {"x": 10, "y": 20, "width": 300, "height": 400}, "facing": "camera-left", "leader": true},
                {"label": "<b>Desk 1</b> & inside", "desk": 1, "place": "inside", "instrument": "viol",
                 "seat": {"x": 320, "y": 20, "width": 300, "height": 400}, "facing": "away-right"}
              ],
              "part": "parts/serenade.bowing.txt",
              "beats": {"tempo_bpm": 92.5, "start_s": 1.25}
            }
            """;

    private TakeFolders() {}

    /** Puts the files that {@link #GOOD} names in the folder, empty, and the take beside them. */
    static Path with(Path folder, String take) throws IOException {
        Files.createDirectories(folder.resolve("parts"));
        for (String name : new String[] {"strings.mp4", "beats.csv", "monday.take.json", "parts/serenade.bowing.txt"}) {
            Files.write(folder.resolve(name), new byte[0]);
        }
        return Files.write(folder.resolve("strings.take.json"), take.getBytes(StandardCharsets.UTF_8));
    }
}
