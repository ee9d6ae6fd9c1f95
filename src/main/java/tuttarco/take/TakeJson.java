package tuttarco.take;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tuttarco.beats.Beat;
import tuttarco.files.OutputException;
import tuttarco.files.Plain;
import tuttarco.score.PartChoice;
import tuttarco.seats.Facing;
import tuttarco.seats.Player;

/** A take as the JSON of its file. */
final class TakeJson {
    private static final JsonMapper JSON = new JsonMapper();

    private TakeJson() {}

    static String of(Take take, Path folder) throws OutputException {
        ObjectNode root = JSON.createObjectNode();
        root.put("version", TakeFile.VERSION);
        root.put("title", take.title());
        root.put("video", inside(folder, take.video()));
        take.day().ifPresent(day -> root.put("day", day.toString()));
        root.put("bowing", take.bowing().word());
        for (Player player : take.players()) {
            put(root.withArray("players").addObject(), player);
        }
        if (take.part().isPresent()) {
            putPart(root, take, folder);
        }
        if (!(take.beats() instanceof BeatsGiven.Missing)) {
            put(root.putObject("beats"), folder, take.beats());
        }
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of texts and numbers can always be written", e);
        }
    }

    private static void put(ObjectNode node, Path folder, BeatsGiven beats) throws OutputException {
        if (beats instanceof BeatsGiven.Steady steady) {
            node.put("tempo_bpm", steady.tempoBpm()).put("start_s", steady.startS());
        } else if (beats instanceof BeatsGiven.Listed listed) {
            node.put("file", inside(folder, listed.list()));
        } else if (beats instanceof BeatsGiven.Carried carried) {
            node.put("take", inside(folder, carried.take()));
        } else if (beats instanceof BeatsGiven.HeardByPart) {
            node.put("heard", BeatsGiven.HeardByPart.WORD);
        } else if (beats instanceof BeatsGiven.HeardClicks clicks) {
            node.put("heard", BeatsGiven.HeardClicks.WORD);
            clicks.firstBar().ifPresent(bar -> node.put("first_bar", bar));
        } else if (beats instanceof BeatsGiven.Anchored anchored) {
            put(node, folder, anchored.source());
            for (Beat anchor : anchored.anchors()) {
                node.withArray("anchors")
                        .addObject()
                        .put("bar", anchor.bar())
                        .put("beat", anchor.beat())
                        .put("time_s", anchor.timeS());
            }
        }
    }

    private static void putPart(ObjectNode root, Take take, Path folder) throws OutputException {
        String partFile = inside(folder, take.part().orElseThrow());
        PartChoice choice = take.partChoice();
        if (choice.equals(PartChoice.DEFAULT) && take.over().isEmpty()) {
            root.put("part", partFile);
            return;
        }
        ObjectNode part = root.putObject("part").put("file", partFile);
        choice.part().ifPresent(name -> part.put("name", name));
        choice.voice().ifPresent(voice -> part.put("voice", voice));
        choice.line().ifPresent(line -> part.put("line", line.word()));
        if (!choice.repeats()) {
            part.put("repeats", false);
        }
        if (take.over().isPresent()) {
            part.put("over", inside(folder, take.over().get()));
        }
    }

    private static void put(ObjectNode node, Player player) {
        node.put("label", player.label());
        node.put("desk", player.desk());
        node.put("place", player.place().word());
        node.put("instrument", player.instrument().word());
        node.putObject("seat")
                .put("x", player.seat().xPx())
                .put("y", player.seat().yPx())
                .put("width", player.seat().widthPx())
                .put("height", player.seat().heightPx());
        node.put("facing", player.facing().map(Facing::word).orElse(Facing.AUTO));
        if (player.leader()) {
            node.put("leader", true);
        }
    }

    /** The name of a file in a take that lies in the folder. */
    static String inside(Path folder, Path file) throws OutputException {
        Path normal = file.toAbsolutePath().normalize();
        if (!normal.startsWith(folder)) {
            throw new OutputException(
                    "a take can't name " + Plain.text(file.toString())
                            + " outside its own folder; copy the file beside the take file first",
                    null);
        }
        List<String> steps = new ArrayList<>();
        folder.relativize(normal).forEach(step -> steps.add(step.toString()));
        return String.join("/", steps);
    }
}
