package tuttarco.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatMap.PlayedBar;
import tuttarco.score.Bar;
import tuttarco.score.Part;

/**
 * {@code chapters.vtt}: the bars as played as chapters of the video; those from one rehearsal mark to the next, or to where
 * the playing stopped, lie in a chapter of the mark's. Without bars it holds none.
 */
public final class Chapters implements Output {
    @Override
    public String name() {
        return "chapters.vtt";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        WebVtt.write(of(take.comparison().beats(), take.part()), folder.resolve(name()));
    }

    static List<WebVtt.Cue> of(BeatMap beats, Optional<Part> part) {
        if (!beats.inBars()) {
            return List.of();
        }
        Map<String, String> marks = marks(part);
        List<WebVtt.Cue> bars = new ArrayList<>();
        List<WebVtt.Cue> letters = new ArrayList<>();
        List<PlayedBar> together = new ArrayList<>();
        for (PlayedBar bar : beats.bars()) {
            bars.add(chapter("Bar " + bar.number(), bar, bar, beats));
            if (marks.containsKey(bar.number()) || beats.beginsRun(bar.firstIndex())) {
                letter(together, marks, beats).ifPresent(letters::add);
                together.clear();
            }
            together.add(bar);
        }
        letter(together, marks, beats).ifPresent(letters::add);
        return Stream.concat(letters.stream(), bars.stream()).toList();
    }

    /** The chapter of bars that follow a rehearsal mark; none where they follow no mark. */
    private static Optional<WebVtt.Cue> letter(List<PlayedBar> bars, Map<String, String> marks, BeatMap beats) {
        return bars.stream()
                .findFirst()
                .filter(first -> marks.containsKey(first.number()))
                .map(first -> chapter(
                        "Rehearsal mark " + marks.get(first.number()), first, bars.get(bars.size() - 1), beats));
    }

    private static WebVtt.Cue chapter(String title, PlayedBar first, PlayedBar last, BeatMap beats) {
        return new WebVtt.Cue(
                beats.beats().get(first.firstIndex()).timeS(), beats.endS(last.lastIndex()), List.of(title));
    }

    private static Map<String, String> marks(Optional<Part> part) {
        return part.stream()
                .flatMap(p -> p.bars().stream())
                .filter(bar -> bar.rehearsal().isPresent())
                .collect(Collectors.toMap(Bar::number, bar -> bar.rehearsal().orElseThrow(), (one, again) -> one));
    }
}
