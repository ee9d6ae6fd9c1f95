package tuttarco.musicxml;

import java.util.List;
import java.util.Locale;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.musicxml.MeasureReader.Measure;
import tuttarco.musicxml.PartList.Listed;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;
import tuttarco.score.PartReader;

/**
 * Reads one part of a MusicXML document (W3C, MusicXML 3.1 and 4.0; partwise or timewise, plain or compressed) in the order
 * played ({@link Unfolding}). Of several voices the one chosen, or the one written first in each bar, counts; grace notes and
 * cue notes don't, and a chord is one note. Notes played pizzicato (as a playback mark or the words pizz. and arco say) are
 * rests of the bow, and so is a tremolo too quick to count its strokes.
 *
 * <p>A bar shorter than its metre begins late if it is the first or is marked implicit (a pickup), and otherwise ends
 * early. A bar without anything written is a full bar's rest, or repeats an earlier one where a sign says so.
 */
public final class MusicXmlPartReader implements PartReader {
    @Override
    public boolean reads(String fileName) {
        String name = fileName.toLowerCase(Locale.ROOT);
        return name.endsWith(".musicxml") || name.endsWith(".xml") || name.endsWith(".mxl");
    }

    @Override
    public Part read(byte[] content, String fileName, Instrument instrument, PartChoice choice) throws InputException {
        String file = Plain.text(fileName);
        byte[] score = score(content, file);
        Listed part = PartList.read(open(score, file), file).chosen(choice.part(), instrument);
        try {
            List<Measure> measures = new ScoreReader(open(score, file), part.id(), choice).read();
            List<Integer> order =
                    Unfolding.order(measures.stream().map(Measure::signs).toList(), choice.repeats());
            return new PartPlaying(measures, order).part(part.names().isEmpty() ? "part" : part.name(), instrument);
        } catch (InputException e) {
            throw e.getMessage().startsWith(file) ? e : new InputException(file + ": " + e.getMessage(), e);
        }
    }

    /**
     * What the parts of a document are called, in its order, each in a way that {@link PartChoice} takes for it alone.
     *
     * @throws InputException if the content is not MusicXML
     */
    public List<String> names(byte[] content, String fileName) throws InputException {
        String file = Plain.text(fileName);
        return PartList.read(open(score(content, file), file), file).callings();
    }

    private static byte[] score(byte[] content, String file) throws InputException {
        if (content.length == 0) {
            throw new InputException(file + " is empty; export the part again");
        }
        return Mxl.isArchive(content) ? Mxl.open(content, file).score() : content;
    }

    static XmlCursor open(byte[] content, String file) throws InputException {
        XmlCursor xml = XmlCursor.open(content, file);
        if (!xml.name().equals("score-partwise") && !xml.name().equals("score-timewise")) {
            throw xml.wrong("this is not MusicXML but a document of <" + Plain.text(xml.name())
                    + ">; give a MusicXML file of a score or part");
        }
        return xml;
    }
}
