package org.ohmstead.assessment;

import java.time.ZoneId;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Limit;
import org.ohmstead.assessment.model.Limits;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How assessment is set up.
 *
 * @param at when the whole estate is walked: seconds, minutes, hours, day of month, month, day of week
 * @param zone in which that is meant
 * @param limits what differs from the defaults, such as {@code jar-rise-act: 0.4}
 */
@ConfigurationProperties("ohmstead.analysis")
record AssessmentSettings(
        @DefaultValue("0 15 2 * * *") String at,
        @DefaultValue("UTC") ZoneId zone,
        @Nullable Map<Limit, Double> limits) {

    Limits limitsInForce() {
        return limits == null ? Limits.standard() : Limits.changed(limits);
    }
}
