package tuttarco.musicxml;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.SAXException;

/** A schema document that stands beside the tests, so that nothing is fetched. */
record SchemaInput(String systemId, URL url) implements LSInput {
    /** The MusicXML 4.0 schema (W3C). */
    static Schema musicXml() throws SAXException {
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setResourceResolver(
                (type, namespace, publicId, systemId, base) -> new SchemaInput(systemId, resource(systemId)));
        return factory.newSchema(resource("/META-INF/jaxb/xsd/musicxml.xsd"));
    }

    private static URL resource(String name) {
        return Objects.requireNonNull(SchemaInput.class.getResource(name), name);
    }

    @Override
    public InputStream getByteStream() {
        try {
            return url.openStream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String getSystemId() {
        return systemId;
    }

    @Override
    public Reader getCharacterStream() {
        return null;
    }

    @Override
    public String getStringData() {
        return null;
    }

    @Override
    public String getPublicId() {
        return null;
    }

    @Override
    public String getBaseURI() {
        return null;
    }

    @Override
    public String getEncoding() {
        return null;
    }

    @Override
    public boolean getCertifiedText() {
        return false;
    }

    @Override
    public void setCharacterStream(Reader stream) {}

    @Override
    public void setByteStream(InputStream stream) {}

    @Override
    public void setStringData(String data) {}

    @Override
    public void setSystemId(String systemId) {}

    @Override
    public void setPublicId(String publicId) {}

    @Override
    public void setBaseURI(String base) {}

    @Override
    public void setEncoding(String encoding) {}

    @Override
    public void setCertifiedText(boolean certified) {}
}
