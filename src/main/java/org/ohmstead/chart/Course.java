package org.ohmstead.chart;

import java.util.List;

/**
 * Several values as they run side by side.
 *
 * @param title what is shown, as a heading
 * @param unit of the values
 * @param along what runs along the bottom, with its unit
 * @param at the places along the bottom, rising
 * @param levels lines to compare with
 */
public record Course(String title, String unit, String along, double[] at, List<Line> lines, List<Trend.Level> levels) {

    public Course {
        lines = List.copyOf(lines);
        levels = List.copyOf(levels);
        for (Line line : lines) {
            if (line.values().length != at.length) {
                throw new IllegalArgumentException("A line has one value per place");
            }
        }
    }

    /**
     * @param words shown at the line's end
     * @param values one per place; NaN leaves a gap
     * @param main whether the others are compared with it
     * @param asks whether it asks for someone
     */
    public record Line(String words, double[] values, boolean main, boolean asks) {}
}
