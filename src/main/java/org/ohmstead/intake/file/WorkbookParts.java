package org.ohmstead.intake.file;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/** Where the parts of a workbook lie in its archive. */
final class WorkbookParts {

    private WorkbookParts() {}

    /** Names of the parts, by the mark under which the workbook speaks of them. */
    static Map<String, String> relations(Archive archive) throws IOException, XMLStreamException {
        Map<String, String> parts = new HashMap<>();
        Optional<ArchiveEntry> entry = archive.entry("xl/_rels/workbook.xml.rels");
        if (entry.isPresent()) {
            SafeXml.elements(archive.open(entry.get()), element -> {
                if (element.getLocalName().equals("Relationship")) {
                    parts.put(SafeXml.attribute(element, "Id"), part(SafeXml.attribute(element, "Target")));
                }
            });
        }
        return parts;
    }

    private static String part(String target) {
        return target.startsWith("/") ? target.substring(1) : "xl/" + target;
    }
}
