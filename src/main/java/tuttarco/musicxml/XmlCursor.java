package tuttarco.musicxml;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * Walks once through an XML document, child by child. A document type line is passed over: nothing it declares is known
 * and nothing outside the document is opened.
 */
final class XmlCursor {
    /** What is done with one child element; whatever it leaves unread of the child is passed over. */
    interface Child {
        void read(String name) throws InputException;
    }

    /** Deepest nesting; a part needs about ten levels. */
    private static final int DEEPEST = 64;
    /** Longest text of one element that is kept, characters. */
    private static final int LONGEST_TEXT = 1000;

    private final String fileName;
    private final XMLStreamReader xml;
    private int depth;

    private XmlCursor(String fileName, XMLStreamReader xml) {
        this.fileName = fileName;
        this.xml = xml;
    }

    /** Opens the document and goes to its root element. */
    static XmlCursor open(byte[] content, String fileName) throws InputException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> new ByteArrayInputStream(new byte[0]));
        StringReader text = new StringReader(XmlText.of(content, fileName));
        try {
            XmlCursor cursor = new XmlCursor(fileName, factory.createXMLStreamReader(text));
            while (cursor.depth == 0) {
                cursor.advance();
            }
            return cursor;
        } catch (XMLStreamException e) {
            throw new InputException(
                    fileName + ": this is not a readable XML document; export the part again as uncompressed MusicXML",
                    e);
        }
    }

    String name() {
        return xml.getLocalName();
    }

    Optional<String> attribute(String name) {
        return Optional.ofNullable(xml.getAttributeValue(null, name)).map(String::strip);
    }

    /** Reads the children of the element the cursor stands on, up to and including its end. */
    void children(Child child) throws InputException {
        int here = depth;
        while (advance() || depth >= here) {
            if (depth > here) {
                child.read(name());
                passOver(here);
            }
        }
    }

    /** The text of the element the cursor stands on, without the ends' blanks, up to and including its end. */
    String text() throws InputException {
        int here = depth;
        StringBuilder text = new StringBuilder();
        while (depth >= here) {
            advance();
            if (xml.isCharacters() && depth == here) {
                text.append(xml.getText());
            }
            if (text.length() > LONGEST_TEXT) {
                throw wrong("this text is longer than " + LONGEST_TEXT + " characters; shorten it");
            }
        }
        return text.toString().strip();
    }

    /** One sentence with the place the cursor stands at. */
    InputException wrong(String what) {
        return new InputException(place() + what);
    }

    private String place() {
        return fileName + ": line " + xml.getLocation().getLineNumber() + ", column "
                + xml.getLocation().getColumnNumber() + ": ";
    }

    private void passOver(int outer) throws InputException {
        while (depth > outer) {
            advance();
        }
    }

    /** Takes one step; true if it was into an element. */
    private boolean advance() throws InputException {
        try {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamConstants.ENTITY_REFERENCE) {
                throw wrong("the document uses an entity, " + Plain.text(name())
                        + ", of its own making, which is not read; export the part again without it");
            }
            if (depth > DEEPEST) {
                throw wrong("elements lie more than " + DEEPEST + " deep in each other; this is not a part");
            }
            return event == XMLStreamConstants.START_ELEMENT;
        } catch (XMLStreamException e) {
            throw new InputException(
                    place() + "the XML is broken here; export the part again as uncompressed MusicXML", e);
        }
    }
}
