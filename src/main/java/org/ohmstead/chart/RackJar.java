package org.ohmstead.chart;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/**
 * A jar in the rack.
 *
 * @param position 1 at the positive end
 * @param change relative to its own baseline, positive in the direction of ageing; NaN when not measured
 * @param address the jar's own page, or null
 * @param words what a reader is told of it
 */
public record RackJar(
        int position,
        Urgency urgency,
        double change,
        @Nullable String address,
        String words) {}
