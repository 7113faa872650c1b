package org.ohmstead.intake.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads XML without document types and entities of its own: nothing outside the file is ever looked at. */
final class SafeXml {

    private static final int LONGEST_TEXT = 32_768;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private SafeXml() {}

    /** Something that looks at the start of an element. */
    @FunctionalInterface
    interface Element {
        void accept(XMLStreamReader xml) throws XMLStreamException;
    }

    static XMLStreamReader reader(InputStream bytes) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("Nothing outside the file is read");
        });
        return factory.createXMLStreamReader(text(bytes));
    }

    /** Parts of a workbook are UTF-8; decoded here, since the parser writes of other bytes to the console. */
    private static Reader text(InputStream bytes) throws XMLStreamException {
        BufferedReader text = new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8.newDecoder()));
        try {
            text.mark(1);
            if (text.read() != BYTE_ORDER_MARK) {
                text.reset();
            }
            return text;
        } catch (IOException broken) {
            throw new XMLStreamException(broken);
        }
    }

    /** The next event; a document type is an error. */
    static int next(XMLStreamReader xml) throws XMLStreamException {
        int event = xml.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw new XMLStreamException("A document type or entity stands in the file");
        }
        return event;
    }

    static void elements(InputStream bytes, Element element) throws IOException, XMLStreamException {
        try (bytes) {
            XMLStreamReader xml = reader(bytes);
            while (xml.hasNext()) {
                if (next(xml) == XMLStreamConstants.START_ELEMENT) {
                    element.accept(xml);
                }
            }
        } catch (RuntimeException broken) {
            throw broken(broken);
        }
    }

    /** An attribute by its local name; empty when there is none. */
    static String attribute(XMLStreamReader xml, String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(name)) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }

    /** The text of the element that has just begun, without that of its parts, up to a limit; ends at its end. */
    static String text(XMLStreamReader xml) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        for (int depth = 1; depth > 0; ) {
            int event = next(xml);
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (xml.isCharacters() && text.length() < LONGEST_TEXT) {
                text.append(xml.getText(), 0, Math.min(xml.getTextLength(), LONGEST_TEXT));
            }
        }
        return text.toString();
    }

    /** The parser of the JDK sometimes throws what it should wrap. */
    static XMLStreamException broken(RuntimeException cause) {
        return new XMLStreamException("The text is not well-formed", cause);
    }
}
