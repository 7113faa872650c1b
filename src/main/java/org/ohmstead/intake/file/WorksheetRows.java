package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Walks through one worksheet. */
final class WorksheetRows {

    static final int MOST_CELLS = 200;
    private static final int LAST_LINE = 1_048_576;

    private final String name;
    private final XMLStreamReader xml;
    private final WorkbookValues values;
    private final RowSink sink;
    private List<String> cells = new ArrayList<>();
    private int line;
    private boolean tooWide;

    WorksheetRows(String name, XMLStreamReader xml, WorkbookValues values, RowSink sink) {
        this.name = name;
        this.xml = xml;
        this.values = values;
        this.sink = sink;
    }

    boolean isTooWide() {
        return tooWide;
    }

    int line() {
        return line;
    }

    /** @return false when the sink has enough, or the sheet cannot be read on */
    boolean read() throws XMLStreamException {
        try {
            boolean more = true;
            while (more && !tooWide && xml.hasNext()) {
                more = event(SafeXml.next(xml));
            }
            return more && !tooWide;
        } catch (RuntimeException broken) {
            throw SafeXml.broken(broken);
        }
    }

    private boolean event(int event) throws XMLStreamException {
        if (event == XMLStreamConstants.START_ELEMENT) {
            if (xml.getLocalName().equals("row")) {
                line = number(SafeXml.attribute(xml, "r"), line + 1);
                cells = new ArrayList<>();
            } else if (xml.getLocalName().equals("c")) {
                cell();
            }
        } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row")) {
            return sink.accept(Row.of(name, line, cells));
        }
        return true;
    }

    private void cell() throws XMLStreamException {
        int column = column(SafeXml.attribute(xml, "r"));
        String type = SafeXml.attribute(xml, "t");
        String style = SafeXml.attribute(xml, "s");
        String raw = value();
        if (column > MOST_CELLS) {
            tooWide |= !raw.isEmpty();
            return;
        }
        while (cells.size() < column) {
            cells.add("");
        }
        cells.set(column - 1, values.text(raw, type, number(style, 0)));
    }

    /** What the cell holds; the formula it may come from is passed over. */
    private String value() throws XMLStreamException {
        String held = "";
        while (true) {
            int event = SafeXml.next(xml);
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("c")) {
                return held;
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                String part = xml.getLocalName();
                if (part.equals("v") || part.equals("is")) {
                    held = SafeXml.text(xml);
                } else {
                    SafeXml.text(xml);
                }
            }
        }
    }

    /** "AB12" is column 28; a cell that doesn't say follows the one before. */
    private int column(String reference) {
        int column = 0;
        for (int i = 0; i < Math.min(reference.length(), 3); i++) {
            char letter = reference.charAt(i);
            column = letter >= 'A' && letter <= 'Z' ? column * 26 + letter - 'A' + 1 : column;
        }
        return column == 0 ? cells.size() + 1 : column;
    }

    private static int number(String digits, int otherwise) {
        return digits.matches("\\d{1,7}") ? Math.min(LAST_LINE, Integer.parseInt(digits)) : otherwise;
    }
}
