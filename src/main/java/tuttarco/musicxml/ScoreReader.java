package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.musicxml.MeasureReader.Head;
import tuttarco.musicxml.MeasureReader.Measure;
import tuttarco.score.PartChoice;

/**
 * Reads the measures of one part from a whole document, partwise or timewise. Signs of repetition are taken from all parts:
 * scores often write a da capo above the top part only.
 */
final class ScoreReader {
    private final XmlCursor xml;
    private final String partId;
    private final MeasureReader part;
    private final Map<String, SignReader> others = new HashMap<>();
    private final List<Signs> signsOfOthers = new ArrayList<>();
    private int partMeasures;
    private int timewiseMeasures;

    /** Reads from the document whose root the cursor stands on. */
    ScoreReader(XmlCursor xml, String partId, PartChoice choice) {
        this.xml = xml;
        this.partId = partId;
        this.part = new MeasureReader(xml, choice);
    }

    /** The part's measures as written. */
    List<Measure> read() throws InputException {
        xml.children(xml.name().equals("score-timewise") ? this::readTimewise : this::readPartwise);
        if (partMeasures == 0) {
            throw xml.wrong("the part has no bars; export it again with its notes");
        }
        List<Measure> measures = new ArrayList<>();
        for (Measure measure : part.measures()) {
            int index = measures.size();
            measures.add(index < signsOfOthers.size() ? measure.withSigns(signsOfOthers.get(index)) : measure);
        }
        return measures;
    }

    private void readPartwise(String child) throws InputException {
        if (child.equals("part")) {
            String id = PartList.id(xml);
            int[] index = {0};
            xml.children(inner -> {
                if (inner.equals("measure")) {
                    readMeasure(id, MeasureReader.head(xml, index[0] + 1), index[0]++);
                }
            });
        }
    }

    private void readTimewise(String child) throws InputException {
        if (child.equals("measure")) {
            int index = timewiseMeasures++;
            Head head = MeasureReader.head(xml, index + 1);
            xml.children(inner -> {
                if (inner.equals("part")) {
                    readMeasure(PartList.id(xml), head, index);
                }
            });
        }
    }

    private void readMeasure(String id, Head head, int index) throws InputException {
        if (id.equals(partId)) {
            if (index != partMeasures++) {
                throw xml.wrong("the part is written twice in, or missing before, bar " + Plain.text(head.number())
                        + "; export it again");
            }
            part.read(head);
        } else {
            SignReader other = others.computeIfAbsent(id, name -> new SignReader(xml));
            while (signsOfOthers.size() <= index) {
                signsOfOthers.add(Signs.NONE);
            }
            signsOfOthers.set(index, signsOfOthers.get(index).and(other.readMeasure()));
        }
    }
}
