package tuttarco.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.MeasureReader.Measure;
import tuttarco.score.PartSpan.Position;

/**
 * Reads the first part of an uncompressed MusicXML document (W3C, MusicXML 4.0, score-partwise), in written order; repeats
 * are not played out. Of several voices the one written first in each bar counts; grace notes and cue notes don't, and a
 * chord is one note. Notes played pizzicato (as a playback mark or the words pizz. and arco say) are rests of the bow.
 *
 * <p>A bar shorter than its metre begins late if it is the first or is marked implicit (a pickup), and otherwise ends
 * early. A bar without anything written is a full bar's rest.
 */
public final class MusicXmlPartReader implements PartReader {
    private static final int LONGEST_NAME = 200;

    @Override
    public boolean reads(String fileName) {
        String name = fileName.toLowerCase(Locale.ROOT);
        return name.endsWith(".musicxml") || name.endsWith(".xml") || name.endsWith(".mxl");
    }

    @Override
    public Part read(byte[] content, String fileName, Instrument instrument) throws InputException {
        String file = Plain.text(fileName);
        refuseOtherKinds(content, file);
        XmlCursor xml = XmlCursor.open(content, file);
        if (xml.name().equals("score-timewise")) {
            throw xml.wrong("this is a score-timewise document; export the part as score-partwise MusicXML");
        }
        if (!xml.name().equals("score-partwise")) {
            throw xml.wrong("this is not MusicXML but a document of <" + Plain.text(xml.name())
                    + ">; give a score-partwise MusicXML file");
        }
        return new Document(xml, file, instrument).read();
    }

    private static void refuseOtherKinds(byte[] content, String file) throws InputException {
        if (content.length == 0) {
            throw new InputException(file + " is empty; export the part again");
        }
        if (content.length > 1 && content[0] == 'P' && content[1] == 'K') {
            throw new InputException(file + " is compressed MusicXML; export the part uncompressed, as .musicxml");
        }
    }

    /** One document being read. */
    private static final class Document {
        private final XmlCursor xml;
        private final String file;
        private final Instrument instrument;
        private Optional<String> name = Optional.empty();
        private Optional<Part> part = Optional.empty();

        Document(XmlCursor xml, String file, Instrument instrument) {
            this.xml = xml;
            this.file = file;
            this.instrument = instrument;
        }

        Part read() throws InputException {
            xml.children(child -> {
                if (child.equals("part-list")) {
                    xml.children(this::readPartList);
                } else if (child.equals("part") && part.isEmpty()) {
                    part = Optional.of(readPart());
                }
            });
            return part.orElseThrow(() -> new InputException(file + " holds no part; export it again with its notes"));
        }

        private void readPartList(String child) throws InputException {
            if (child.equals("score-part") && name.isEmpty()) {
                xml.children(inner -> {
                    if (inner.equals("part-name")) {
                        name = Optional.of(xml.text()).filter(text -> !text.isEmpty());
                    }
                });
            }
        }

        private Part readPart() throws InputException {
            List<Measure> measures = new ArrayList<>();
            MeasureReader reader = new MeasureReader(xml);
            xml.children(child -> {
                if (child.equals("measure")) {
                    measures.add(reader.read());
                }
            });
            if (measures.isEmpty()) {
                throw xml.wrong("the first part has no bars; export it again with its notes");
            }
            try {
                return assembled(measures);
            } catch (InputException e) {
                throw new InputException(file + ": " + e.getMessage(), e);
            }
        }

        private Part assembled(List<Measure> measures) throws InputException {
            PartBuilder builder = new PartBuilder(instrument);
            StrokeJoiner joiner = new StrokeJoiner();
            for (int i = 0; i < measures.size(); i++) {
                Measure measure = measures.get(i);
                addNotes(measure, new BarGrid(measure, i == 0), builder, joiner);
            }
            joiner.finish(builder);
            return builder.build(name.map(Document::cleanName).orElse("part"));
        }

        private static String cleanName(String text) {
            return text.replaceAll("[\\s\\p{Cntrl}\\x80-\\x9f]+", " ")
                    .codePoints()
                    .limit(LONGEST_NAME)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }
    }

    /** A tied note lets the one before it sound on. */
    private static void addSound(WrittenNote note, Position start, Position end, int measure, PartBuilder builder) {
        if (note.pitches().isEmpty()) {
            return;
        }
        if (note.joins().tieStops() && builder.sounds(note.pitches())) {
            builder.hold(end);
        } else {
            builder.note(new Note(start, end, note.pitches(), !note.bowed(), new Note.Written(measure, note.place())));
        }
    }

    private static void addNotes(Measure measure, BarGrid grid, PartBuilder builder, StrokeJoiner joiner)
            throws InputException {
        int index = builder.bar(grid.bar());
        BigFraction at = BigFraction.ZERO;
        for (WrittenNote note : measure.notes()) {
            if (note.start().compareTo(at) > 0) {
                joiner.rest(grid.position(index, at), grid.position(index, note.start()));
            }
            Position start = grid.position(index, note.start());
            Position end = grid.position(index, note.end());
            if (note.bowed()) {
                joiner.note(start, end, note.joins());
            } else {
                joiner.rest(start, end);
            }
            addSound(note, start, end, index, builder);
            at = note.end();
        }
        if (at.compareTo(grid.lengthQuarters()) < 0) {
            joiner.rest(grid.position(index, at), grid.position(index, grid.lengthQuarters()));
        }
    }
}
