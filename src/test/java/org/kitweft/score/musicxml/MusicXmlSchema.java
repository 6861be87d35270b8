package org.kitweft.score.musicxml;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.transform.sax.SAXSource;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.audiveris.proxymusic.ScorePartwise;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/** The MusicXML 4.0 schema of the proxymusic jar, offline. */
final class MusicXmlSchema {
    private final Schema schema;

    MusicXmlSchema() throws SAXException, ReflectiveOperationException {
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        DOMImplementationLS dom =
                (DOMImplementationLS)
                        DOMImplementationRegistry.newInstance().getDOMImplementation("LS");
        factory.setResourceResolver(
                (type, namespace, publicId, systemId, base) -> {
                    LSInput input = dom.createLSInput();
                    String name = systemId.substring(systemId.lastIndexOf('/') + 1);
                    input.setSystemId(name);
                    input.setByteStream(
                            Objects.requireNonNull(
                                    MusicXmlSchema.class.getResourceAsStream(name), name));
                    return input;
                });
        InputStream musicXml =
                ScorePartwise.class.getResourceAsStream("/META-INF/jaxb/xsd/musicxml.xsd");
        this.schema = factory.newSchema(new StreamSource(Objects.requireNonNull(musicXml)));
    }

    private static XMLReader reader() throws SAXException {
        try {
            SAXParserFactory factory = SAXParserFactory.newInstance();
            factory.setNamespaceAware(true);
            XMLReader reader = factory.newSAXParser().getXMLReader();
            reader.setFeature(
                    "http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return reader;
        } catch (ParserConfigurationException e) {
            throw new SAXException(e);
        }
    }

    void check(byte[] file) throws SAXException, IOException {
        Validator validator = schema.newValidator();
        XMLReader reader = reader();
        validator.validate(new SAXSource(reader, new InputSource(new ByteArrayInputStream(file))));
    }
}
