package org.ohmstead.intake.repair;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Row;
import org.ohmstead.kernel.FormulaGuard;

/** Writes a file's rows with one column more, at the same place in each: what was remarked on that line. */
public final class RemarkedRows {

    static final String TITLE = "why";

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d*[.,]?\\d+([eE][+-]?\\d+)?");
    private static final Pattern JARS = Pattern.compile("(?:jar|position)s? (.+)");
    private static final Pattern RANGE = Pattern.compile("(\\d+)(?:–(\\d+))?");

    private RemarkedRows() {}

    /**
     * A remark.
     *
     * @param line it points at; 0 when at none
     * @param place in words: "jars 3, 7–9" stands beside each of these rows
     */
    public record Why(int line, String place, String words) {}

    /** The remarks on no line stand beside the first row. */
    public static String write(List<Row> rows, List<Why> remarks, char delimiter) {
        int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        Map<Integer, List<String>> byRow = placed(rows, remarks);
        StringBuilder out = new StringBuilder();
        for (int n = 0; n < rows.size(); n++) {
            List<String> cells = new ArrayList<>();
            rows.get(n).cells().stream().map(Cell::text).forEach(cells::add);
            cells.addAll(Collections.nCopies(width - cells.size(), ""));
            line(out, cells, why(n, byRow.getOrDefault(n, List.of())), delimiter);
        }
        if (rows.isEmpty()) {
            remarks.forEach(remark -> line(out, List.of(), remark.words(), delimiter));
        }
        return out.toString();
    }

    /** The first row names the column. */
    private static String why(int row, List<String> words) {
        String all = String.join(" | ", words);
        return row > 0 ? all : all.isEmpty() ? TITLE : TITLE + ": " + all;
    }

    private static Map<Integer, List<String>> placed(List<Row> rows, List<Why> remarks) {
        Map<Integer, List<String>> byRow = new HashMap<>();
        for (Why remark : remarks) {
            for (int row : rowsOf(remark, rows)) {
                byRow.computeIfAbsent(row, fresh -> new ArrayList<>()).add(remark.words());
            }
        }
        return byRow;
    }

    /** The rows of its jars, from the row it points at on; else that row; else the first. */
    private static List<Integer> rowsOf(Why remark, List<Row> rows) {
        int first = 0;
        while (first < rows.size() && rows.get(first).line() < remark.line()) {
            first++;
        }
        List<Integer> places = new ArrayList<>();
        Matcher jars = JARS.matcher(remark.place());
        if (remark.line() > 0 && jars.matches()) {
            for (Matcher range = RANGE.matcher(jars.group(1)); range.find(); ) {
                int from = Integer.parseInt(range.group(1));
                int to = range.group(2) == null ? from : Integer.parseInt(range.group(2));
                for (int n = first; n < rows.size(); n++) {
                    if (isBetween(rows.get(n).cell(1).text(), from, to)) {
                        places.add(n);
                    }
                }
            }
        }
        return places.isEmpty() ? List.of(first < rows.size() ? first : 0) : places;
    }

    private static boolean isBetween(String position, int from, int to) {
        return position.matches("\\d{1,4}") && Integer.parseInt(position) >= from && Integer.parseInt(position) <= to;
    }

    private static void line(StringBuilder out, List<String> cells, String why, char delimiter) {
        for (String cell : cells) {
            out.append(quoted(cell, delimiter)).append(delimiter);
        }
        out.append(quoted(why, delimiter)).append("\r\n");
    }

    private static String quoted(String text, char delimiter) {
        String safe = NUMBER.matcher(text).matches() ? text : FormulaGuard.guarded(text);
        boolean plain = safe.chars().noneMatch(letter -> letter == delimiter || letter == '"' || letter < ' ');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }
}
