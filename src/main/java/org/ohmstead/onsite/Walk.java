package org.ohmstead.onsite;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything needed to walk a string without a network: its places in walking order, what was read last, and where the
 * lines are drawn.
 *
 * @param title "FEL-03 / B"
 * @param timeZone in which the survey's time is written
 * @param ohmicKind in which the string was read last: impedance, resistance or conductance
 * @param ohmicUnit mΩ, or S for conductance
 * @param last the survey that stands last; null before the first
 * @param instruments test sets used here before, the latest first
 * @param jars by position
 * @param links by ordinal 0..N
 * @param asOf when this was put together
 */
public record Walk(
        long stringId,
        String title,
        String siteCode,
        String siteName,
        String stringName,
        String accessNotes,
        String timeZone,
        String build,
        String ohmicKind,
        String ohmicUnit,
        @Nullable Double ohmicHertz,
        @Nullable LastSurvey last,
        List<TestSet> instruments,
        List<JarPlace> jars,
        List<LinkPlace> links,
        WalkLimits limits,
        List<String> cautions,
        Instant asOf) {

    public Walk {
        instruments = List.copyOf(instruments);
        jars = List.copyOf(jars);
        links = List.copyOf(links);
        cautions = List.copyOf(cautions);
    }

    @JsonProperty
    public int positions() {
        return jars.size();
    }

    /** The survey that stands last, in the figures that are compared on site. */
    public record LastSurvey(
            LocalDate takenOn,
            String takenBy,
            @Nullable Double ambientCelsius,
            @Nullable Double stringVolts,
            @Nullable Double floatAmps,
            @Nullable Double rippleAmps,
            @Nullable Double injectedAmps) {}

    /** @param calibrationDue as it was on record when it was last used */
    public record TestSet(String serial, @Nullable LocalDate calibrationDue) {}
}
