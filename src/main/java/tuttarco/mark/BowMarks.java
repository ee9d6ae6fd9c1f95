package tuttarco.mark;

import java.util.List;
import tuttarco.musicxml.StrokeMark;

/**
 * The bow signs a player's bowing gives the part.
 *
 * @param marks one a stroke that was played, in the order of the file
 * @param remarks what a reader should know about single strokes, a sentence each, in the order played
 */
public record BowMarks(List<StrokeMark> marks, List<String> remarks) {
    public BowMarks {
        marks = List.copyOf(marks);
        remarks = List.copyOf(remarks);
    }

    /** How many signs and question marks will stand. */
    public long signs() {
        return marks.stream().filter(m -> m.sign().isPresent() || m.question()).count();
    }

    public long questions() {
        return marks.stream().filter(StrokeMark::question).count();
    }
}
