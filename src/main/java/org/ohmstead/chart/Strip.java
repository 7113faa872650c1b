package org.ohmstead.chart;

import java.util.List;
import org.ohmstead.kernel.Urgency;

/** Values of things that are compared within their kind, one row per kind on a common scale. */
public record Strip(String title, String unit, List<Row> rows) {

    public Strip {
        rows = List.copyOf(rows);
    }

    public record Row(String words, List<Mark> marks) {
        public Row {
            marks = List.copyOf(marks);
        }
    }

    /**
     * @param words shown beside the mark when it asks for someone
     * @param value NaN when not measured
     */
    public record Mark(String words, double value, Urgency urgency) {}
}
