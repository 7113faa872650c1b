package org.ohmstead.intake.repair;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;

/**
 * The rows of a walk. The closing reading is taken at the end of any walk and belongs to no jar, so it stays at the end
 * whatever moves.
 */
record Walked(List<ReadingRow> rows, @Nullable ReadingRow closing) {

    static Walked of(SurveySheet sheet, Ground ground) {
        ReadingRow closing = ground.closingOf(sheet);
        if (closing == null) {
            return new Walked(sheet.rows(), null);
        }
        List<ReadingRow> rows = new ArrayList<>(sheet.rows());
        int at = rows.indexOf(closing);
        if (closing.position() > ground.positions()) {
            rows.remove(at);
        } else {
            rows.set(at, Rows.jarOnly(closing, closing.position()));
        }
        return new Walked(rows, Rows.linkOnly(closing, ground.positions() + 1));
    }

    /** The sheet with these rows instead, and the closing reading after them. */
    SurveySheet movedTo(List<ReadingRow> moved, SurveySheet sheet) {
        List<ReadingRow> all = new ArrayList<>(moved);
        if (closing != null) {
            all.add(closing);
        }
        return Rows.with(sheet, all);
    }

    /** Jar and link halves put together again, place by place, in the order they came. */
    static List<ReadingRow> joined(List<ReadingRow> jars, List<ReadingRow> links) {
        int last = Math.max(last(jars), last(links));
        List<ReadingRow> rows = new ArrayList<>();
        for (int position = 0; position <= last; position++) {
            rows.addAll(paired(at(jars, position), at(links, position)));
        }
        return rows;
    }

    private static List<ReadingRow> paired(List<ReadingRow> jars, List<ReadingRow> links) {
        List<ReadingRow> rows = new ArrayList<>();
        for (int n = 0; n < Math.max(jars.size(), links.size()); n++) {
            if (n >= jars.size()) {
                rows.add(links.get(n));
            } else {
                rows.add(
                        n < links.size() ? Rows.joined(jars.get(n), links.get(n).linkMicroohms()) : jars.get(n));
            }
        }
        return rows;
    }

    private static List<ReadingRow> at(List<ReadingRow> halves, int position) {
        return halves.stream().filter(row -> row.position() == position).toList();
    }

    private static int last(List<ReadingRow> halves) {
        return halves.stream().mapToInt(ReadingRow::position).max().orElse(0);
    }
}
