package org.ohmstead.onsite;

import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Limit;
import org.ohmstead.assessment.model.Limits;

/**
 * From where on a reading taken from post to post is too high. The limits are drawn on the joints alone; what the cable
 * itself has is added again, because the crew reads the whole.
 *
 * @param conductorMicroohms the cable's own share; 0 for straps and unknown cables
 */
record LinkEdges(boolean isCable, double conductorMicroohms, Limits limits) {

    /** @param net of the joints when first read; null without a baseline */
    @Nullable
    Double overBaseline(@Nullable Double net) {
        if (net == null || net <= 0) {
            return null;
        }
        double edge = conductorMicroohms + net * (1 + limits.of(Limit.LINK_RISE_ACT));
        return Rounded.off(isCable ? Math.max(edge, beyondNoise(net)) : edge);
    }

    /** @param net average of the joints of its kind; null when it is not known */
    @Nullable
    Double overKind(@Nullable Double net) {
        return net == null || net <= 0
                ? null
                : Rounded.off(conductorMicroohms + net * (1 + limits.of(Limit.LINK_KIND_NOTE)));
    }

    @Nullable
    Double whole(@Nullable Double net) {
        return net == null ? null : Rounded.off(conductorMicroohms + net);
    }

    /** A small rest of a large reading: a change within the repeatability of the whole reading is no change. */
    private double beyondNoise(double net) {
        return (conductorMicroohms + net) / (1 - limits.of(Limit.CABLE_NOISE));
    }
}
