package org.ohmstead.fleet.web;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.Column;

/**
 * One field of a form, with what was typed and what is wrong with it.
 *
 * @param id unique on the page
 * @param name the column's header in the files, so that pages, programs and files speak alike
 * @param type text, long, number, date or choice
 * @param choices value and words; for text they are suggestions
 */
record Field(
        String id,
        String name,
        String label,
        String unit,
        String help,
        String type,
        String value,
        @Nullable String message,
        Map<String, String> choices,
        boolean required) {

    static Field of(
            String prefix, Column<?, ?> column, String value, @Nullable String message, Map<String, String> choices) {
        return new Field(
                prefix + "-" + column.header().replace('_', '-'),
                column.header(),
                column.label(),
                column.unit(),
                column.help(),
                type(column, choices),
                value,
                message,
                choices,
                column.required());
    }

    /** Space-separated ids of what explains the field, or null. */
    public @Nullable String describedBy() {
        String ids = (message == null ? "" : id + "-message ") + (help.isEmpty() ? "" : id + "-hint");
        return ids.isBlank() ? null : ids.strip();
    }

    /** Ids of a page may not carry a plain selector's special signs; the list of suggestions has its own. */
    public String listId() {
        return id + "-list";
    }

    private static String type(Column<?, ?> column, Map<String, String> choices) {
        if (column.header().equals("time_zone")) {
            return "text";
        }
        if (!choices.isEmpty()) {
            return "choice";
        }
        return switch (column.cell().sort()) {
            case LONG_TEXT -> "long";
            case NUMBER -> "number";
            case DATE -> "date";
            case TEXT, WORD -> "text";
        };
    }
}
