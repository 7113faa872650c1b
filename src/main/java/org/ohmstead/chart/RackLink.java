package org.ohmstead.chart;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

/**
 * A link in the rack.
 *
 * @param ordinal 0 is the positive terminal link, k joins positions k and k+1, N is the negative terminal link
 * @param netMicroohms of the joint without its cable; NaN when not measured
 * @param address the link's own page, or null
 * @param words what a reader is told of it
 */
public record RackLink(
        int ordinal,
        LinkKind kind,
        Urgency urgency,
        double netMicroohms,
        @Nullable String address,
        String words) {}
