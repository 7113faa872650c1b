package org.ohmstead.fleet.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.Column;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.TextRow;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;
import org.ohmstead.kernel.Refused;

/**
 * How a sheet's columns make a form. The rules of a field are those of its column, so that a page accepts exactly what
 * a file accepts.
 *
 * @param prefix of the fields' ids
 * @param groups titles and the headers below each; columns in no group are not shown and keep their value
 * @param choices by header: values and words
 */
record FormDesign<E>(
        Sheet<E> sheet, String prefix, Map<String, List<String>> groups, Map<String, Map<String, String>> choices) {

    EntryForm form(Map<String, String> cells) {
        return form(cells, Map.of(), null);
    }

    /**
     * Reads what was typed and acts on it.
     *
     * @param base texts of the columns that are not shown
     * @param typed all parameters of the request
     * @return null when all went well, else the form with its messages
     */
    @Nullable
    EntryForm submit(Map<String, String> base, Map<String, String> typed, Consumer<E> act) {
        Map<String, String> cells = new LinkedHashMap<>();
        sheet.headers().forEach(header -> cells.put(header, base.getOrDefault(header, "")));
        shown().forEach(header ->
                cells.put(header, typed.getOrDefault(header, "").replace("\r\n", "\n")));
        Partial<E> read = sheet.read(new TextRow(0, cells));
        try {
            if (!read.isFlawless()) {
                return form(cells, messages(read.flaws()), null);
            }
            act.accept(read.rows().get(0));
            return null;
        } catch (Refused refusal) {
            return form(cells, messages(refusal.flaws()), refusal.flaws().isEmpty() ? refusal.getMessage() : null);
        } catch (Conflict conflict) {
            return form(cells, Map.of(), conflict.getMessage());
        }
    }

    private EntryForm form(Map<String, String> cells, Map<String, String> messages, @Nullable String problem) {
        List<EntryForm.Group> all = new ArrayList<>();
        Map<String, String> elsewhere = new TreeMap<>(messages);
        shown().forEach(elsewhere::remove);
        groups.forEach((title, headers) -> all.add(new EntryForm.Group(
                title,
                headers.stream()
                        .map(header -> Field.of(
                                prefix,
                                column(header),
                                cells.getOrDefault(header, ""),
                                messages.get(header),
                                choices(header)))
                        .toList())));
        String hidden = elsewhere.isEmpty() ? null : String.join(" ", elsewhere.values());
        return new EntryForm(all, problem == null ? hidden : problem);
    }

    private List<String> shown() {
        return groups.values().stream().flatMap(List::stream).toList();
    }

    private Map<String, String> messages(List<Flaw> flaws) {
        Map<String, String> messages = new HashMap<>();
        for (Flaw flaw : flaws) {
            String header = flaw.column() == 0 ? "" : sheet.headers().get(flaw.column() - 1);
            messages.putIfAbsent(header, sentence(header, flaw));
        }
        return messages;
    }

    /** Beside its field a message need not name the column. */
    private String sentence(String header, Flaw flaw) {
        if (flaw.message().equals(header + " is missing.") || flaw.message().equals(header + " cannot be read.")) {
            return flaw.remedy();
        }
        return labelled(flaw.message() + " " + flaw.remedy());
    }

    /** Files speak of headers, pages of labels. */
    private String labelled(String sentence) {
        String words = sentence;
        for (Column<E, ?> column : sheet.columns()) {
            if (column.header().contains("_")) {
                words = words.replaceAll(
                        "\\b" + column.header() + "\\b", Matcher.quoteReplacement("“" + column.label() + "”"));
            }
        }
        return words;
    }

    private Map<String, String> choices(String header) {
        Map<String, String> offered = choices.get(header);
        if (offered != null) {
            return offered;
        }
        Map<String, String> words = new LinkedHashMap<>();
        column(header).cell().choices().forEach(value -> words.put(value, words(value)));
        return words;
    }

    private static String words(String value) {
        return value.length() > 3 && value.equals(value.toUpperCase(java.util.Locale.ROOT)) && !value.contains(" ")
                ? value.toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
                : value;
    }

    private Column<E, ?> column(String header) {
        return sheet.columns().get(sheet.columnNumber(header) - 1);
    }
}
