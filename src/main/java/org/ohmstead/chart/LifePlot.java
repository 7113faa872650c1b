package org.ohmstead.chart;

import java.util.List;

/**
 * Share still in service by age.
 *
 * @param title what is shown, as a heading
 * @param steps as counted: from each age on the share is as said
 * @param law a smooth curve fitted to it; empty when there is none
 * @param untilYears how far anything was seen
 */
public record LifePlot(String title, List<Point> steps, List<Point> law, double untilYears) {

    /** @param share still in service with its range, 0 to 1 */
    public record Point(double years, double share, double low, double high) {}

    public LifePlot {
        steps = List.copyOf(steps);
        law = List.copyOf(law);
    }
}
