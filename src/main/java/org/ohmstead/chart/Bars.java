package org.ohmstead.chart;

import java.util.List;

/**
 * Counts side by side, each with the range that may hold it.
 *
 * @param title what is shown, as a heading
 * @param unit of the counts
 */
public record Bars(String title, String unit, List<Bar> bars) {

    /** @param words below the bar; a second line after a line break */
    public record Bar(String words, double value, double low, double high) {}

    public Bars {
        bars = List.copyOf(bars);
    }
}
