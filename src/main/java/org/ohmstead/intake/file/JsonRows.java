package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.kernel.Flaw;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;

/**
 * Reads JSON as rows: an object's single values are lines of key and value; an array of objects is a table, its keys the
 * titles; objects that hold tables follow one another.
 */
final class JsonRows {

    private static final int MOST_TITLES = 200;

    private final RowSink sink;
    private final Findings findings;
    private boolean wanted = true;

    JsonRows(RowSink sink, Findings findings) {
        this.sink = sink;
        this.findings = findings;
    }

    void read(String text) {
        try {
            JsonNode root = JsonTree.read(text);
            if (root.shape() == JsonNode.Shape.ARRAY) {
                table(root);
            } else {
                block(root);
            }
        } catch (JacksonException broken) {
            findings.add(Finding.unreadable(flaw(broken)));
        }
    }

    private static Flaw flaw(JacksonException broken) {
        TokenStreamLocation at = broken.getLocation();
        String message = "This is not JSON as RFC 8259 has it, or it is larger than is taken here: "
                + broken.getOriginalMessage() + ".";
        String remedy = "Write the file anew; each key stands once, and nothing follows the end.";
        int line = at == null ? 0 : Math.max(0, at.getLineNr());
        return new Flaw(line, line == 0 ? 0 : Math.max(0, at.getColumnNr()), null, message, remedy);
    }

    private void block(JsonNode object) {
        for (int i = 0; i < object.parts().size() && wanted; i++) {
            part(object.keys().get(i), object.parts().get(i));
        }
    }

    private void part(String key, JsonNode part) {
        if (part.isTable()) {
            table(part);
        } else if (part.isBlock()) {
            block(part);
        } else {
            Map<String, JsonNode> values = new LinkedHashMap<>();
            flatten(key, part, values);
            if (part.shape() == JsonNode.Shape.ARRAY) {
                List<Cell> cells = new ArrayList<>(List.of(part.saying(key)));
                values.values().forEach(value -> cells.add(value.cell()));
                emit(part, cells);
            } else {
                values.forEach((name, value) -> emit(value, List.of(value.saying(name), value.cell())));
            }
        }
    }

    private void table(JsonNode array) {
        if (array.parts().stream().anyMatch(JsonNode::isBlock)) {
            array.parts().stream().filter(part -> wanted).forEach(this::block);
            return;
        }
        List<Map<String, JsonNode>> rows = new ArrayList<>();
        Map<String, Cell> titles = new LinkedHashMap<>();
        for (JsonNode part : array.parts()) {
            Map<String, JsonNode> values = new LinkedHashMap<>();
            flatten("", part, values);
            values.forEach((title, value) -> titles.computeIfAbsent(title, value::saying));
            rows.add(values);
        }
        if (titles.size() > MOST_TITLES) {
            findings.add(Finding.unreadable(Flaw.ofLine(
                    array.line(), "A table has more than " + MOST_TITLES + " keys.", "Keep those of the survey.")));
            return;
        }
        Map<String, Cell> ordered = inOrder(titles);
        emit(array, List.copyOf(ordered.values()));
        for (int i = 0; i < rows.size() && wanted; i++) {
            Map<String, JsonNode> values = rows.get(i);
            JsonNode row = array.parts().get(i);
            emit(
                    row,
                    ordered.keySet().stream()
                            .map(title -> values.containsKey(title)
                                    ? values.get(title).cell()
                                    : row.saying(""))
                            .toList());
        }
    }

    /** A survey sheet's titles begin with "position", wherever the key stands. */
    private static Map<String, Cell> inOrder(Map<String, Cell> titles) {
        Map<String, Cell> ordered = new LinkedHashMap<>();
        titles.forEach((title, cell) -> {
            if (Spelling.plain(title).equals(ColumnsReader.FIRST_TITLE)) {
                ordered.put(title, cell);
            }
        });
        titles.forEach(ordered::putIfAbsent);
        return ordered;
    }

    /** Nested keys are joined by a blank; the parts of an array are numbered from the second one on. */
    private static void flatten(String key, JsonNode node, Map<String, JsonNode> into) {
        if (node.isValue()) {
            into.putIfAbsent(key, node);
            return;
        }
        for (int i = 0; i < node.parts().size(); i++) {
            String own = node.shape() == JsonNode.Shape.OBJECT ? node.keys().get(i) : i == 0 ? "" : "" + (i + 1);
            flatten((key + " " + own).trim(), node.parts().get(i), into);
        }
    }

    private void emit(JsonNode at, List<Cell> cells) {
        wanted = wanted && sink.accept(new Row("", at.line(), cells));
    }
}
