package tuttarco.musicxml;

import java.io.StringWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.musicxml.NoteValue.Written;
import tuttarco.score.Bar;
import tuttarco.score.BarPieces;
import tuttarco.score.BarPieces.Piece;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.Reason;

/**
 * Writes a part as uncompressed MusicXML (W3C, MusicXML 4.0, score-partwise), each stroke as one note, tied on where it
 * outlasts a note value or a bar. Marked strokes carry their bow sign, hooked ones a dot under a slur; the others carry
 * nothing, so that a reader completes them.
 */
public final class MusicXmlPartWriter {
    private final Instrument instrument;
    private final List<Pitch> pitches;

    /** Writes all strokes on an open string. */
    public MusicXmlPartWriter(Instrument instrument) {
        this(instrument, List.of(Pitch.openString(instrument)));
    }

    /** Gives each stroke the next of the pitches, and begins with them again after the last. */
    public MusicXmlPartWriter(Instrument instrument, List<Pitch> pitches) {
        if (pitches.isEmpty()) {
            throw new IllegalArgumentException("notes need at least one pitch");
        }
        this.instrument = instrument;
        this.pitches = List.copyOf(pitches);
    }

    /**
     * The document's text, to be saved in UTF-8.
     *
     * @throws IllegalArgumentException if a length is finer than 1/10080 of a quarter note
     */
    public String text(Part part) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            new Document(xml, part).write();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("XML written to memory does not fail", e);
        }
        return text.toString();
    }

    /** One document being written. */
    private final class Document {
        private final XMLStreamWriter xml;
        private final Part part;
        private final Set<PartSpan> hookedOn;
        private int strokes;

        Document(XMLStreamWriter xml, Part part) {
            this.xml = xml;
            this.part = part;
            this.hookedOn = hookedOn(part);
        }

        /** The strokes to which the next one is hooked. */
        private static Set<PartSpan> hookedOn(Part part) {
            Set<PartSpan> strokes = new HashSet<>();
            Optional<MarkedStroke> before = Optional.empty();
            for (PartSpan span : part.spans()) {
                if (span instanceof MarkedStroke stroke) {
                    if (stroke.reason() instanceof Reason.Hooked) {
                        before.ifPresent(strokes::add);
                    }
                    before = Optional.of(stroke);
                }
            }
            return strokes;
        }

        void write() throws XMLStreamException {
            xml.writeStartDocument("UTF-8", "1.0");
            open("score-partwise", "version", "4.0");
            open("part-list");
            open("score-part", "id", "P1");
            element("part-name", part.name());
            close();
            close();
            open("part", "id", "P1");
            List<List<Piece>> bars = BarPieces.of(part);
            Optional<Metre> metre = Optional.empty();
            for (int i = 0; i < bars.size(); i++) {
                Bar bar = part.bars().get(i);
                open("measure", "number", bar.number());
                if (bar.firstBeat() > 1) {
                    xml.writeAttribute("implicit", "yes");
                }
                if (!metre.equals(Optional.of(bar.metre()))) {
                    metre = Optional.of(bar.metre());
                    attributes(bar.metre(), i == 0);
                }
                for (Piece piece : bars.get(i)) {
                    notes(piece);
                }
                close();
            }
            close();
            close();
            xml.writeEndDocument();
        }

        private void attributes(Metre metre, boolean first) throws XMLStreamException {
            open("attributes");
            if (first) {
                element("divisions", Integer.toString(BarPieces.DIVISIONS));
            }
            open("time");
            element("beats", Integer.toString(metre.beats()));
            element("beat-type", Integer.toString(metre.beatType()));
            close();
            if (first) {
                Clef clef = Clef.of(instrument);
                open("clef");
                element("sign", clef.sign());
                element("line", Integer.toString(clef.line()));
                close();
                if (clef.octavesDown() > 0) {
                    open("transpose");
                    element("chromatic", "0");
                    element("octave-change", Integer.toString(-clef.octavesDown()));
                    close();
                }
            }
            close();
        }

        private void notes(Piece piece) throws XMLStreamException {
            List<Written> values = NoteValue.split(piece.divisions());
            for (int i = 0; i < values.size(); i++) {
                boolean first = piece.begins() && i == 0;
                boolean last = piece.ends() && i == values.size() - 1;
                note(piece.span(), values.get(i), first, last);
                if (last && piece.span() instanceof MarkedStroke) {
                    strokes++;
                }
            }
        }

        private void note(PartSpan span, Written value, boolean first, boolean last) throws XMLStreamException {
            boolean rest = span instanceof PartSpan.Rest;
            open("note");
            if (rest) {
                xml.writeEmptyElement("rest");
            } else {
                pitch(pitches.get(strokes % pitches.size()));
            }
            element("duration", Integer.toString(value.divisions()));
            if (!rest) {
                ties("tie", first, last);
            }
            element("voice", "1");
            if (value.type().isPresent()) {
                element("type", value.type().get());
                for (int dot = 0; dot < value.dots(); dot++) {
                    xml.writeEmptyElement("dot");
                }
            }
            if (span instanceof MarkedStroke stroke) {
                notations(stroke, first, last);
            }
            close();
        }

        private void pitch(Pitch pitch) throws XMLStreamException {
            open("pitch");
            element("step", String.valueOf(pitch.step()));
            if (pitch.alter() != 0) {
                element("alter", Integer.toString(pitch.alter()));
            }
            element("octave", Integer.toString(pitch.octave()));
            close();
        }

        private void notations(MarkedStroke stroke, boolean first, boolean last) throws XMLStreamException {
            boolean marked = first && stroke.marked();
            boolean hooked = first && stroke.reason() instanceof Reason.Hooked;
            boolean hooksOn = first && hookedOn.contains(stroke);
            if (first && last && !marked && !hooked && !hooksOn) {
                return;
            }
            open("notations");
            ties("tied", first, last);
            if (hooked != hooksOn) {
                xml.writeEmptyElement("slur");
                xml.writeAttribute("type", hooked ? "stop" : "start");
            }
            if (hooked) {
                open("articulations");
                xml.writeEmptyElement("staccato");
                close();
            }
            if (marked) {
                open("technical");
                xml.writeEmptyElement(stroke.direction() == BowDirection.DOWN ? "down-bow" : "up-bow");
                close();
            }
            close();
        }

        private void ties(String name, boolean first, boolean last) throws XMLStreamException {
            if (!first) {
                xml.writeEmptyElement(name);
                xml.writeAttribute("type", "stop");
            }
            if (!last) {
                xml.writeEmptyElement(name);
                xml.writeAttribute("type", "start");
            }
        }

        private void open(String name) throws XMLStreamException {
            xml.writeStartElement(name);
        }

        private void open(String name, String attribute, String value) throws XMLStreamException {
            open(name);
            xml.writeAttribute(attribute, value);
        }

        private void element(String name, String content) throws XMLStreamException {
            open(name);
            xml.writeCharacters(content);
            close();
        }

        private void close() throws XMLStreamException {
            xml.writeEndElement();
        }
    }

    /** The clef a part is usually written in (common practice, no source). */
    private record Clef(String sign, int line, int octavesDown) {
        static Clef of(Instrument instrument) {
            return switch (instrument) {
                case VIOLIN -> new Clef("G", 2, 0);
                case VIOLA, VIOL -> new Clef("C", 3, 0);
                case CELLO -> new Clef("F", 4, 0);
                case BASS -> new Clef("F", 4, 1);
            };
        }
    }
}
