package org.ohmstead.assessment;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;

/**
 * What a person decides instead of the engine.
 *
 * @param unit position of a jar, ordinal of a link; null for the whole string
 * @param lastDay the last day on which it holds
 */
public record NewOverrule(
        OverruleView.Subject subject, @Nullable Integer unit, Urgency urgency, String reason, LocalDate lastDay) {

    private static final int LONGEST_REASON = 2000;
    private static final int LONGEST_YEARS = 2;

    void check(LocalDate today) {
        if (reason.isBlank() || reason.length() > LONGEST_REASON) {
            throw new Refused("Give the reason in at most " + LONGEST_REASON + " characters: others will act on it.");
        }
        if (lastDay.isBefore(today) || lastDay.isAfter(today.plusYears(LONGEST_YEARS))) {
            throw new Refused("It must end between today, " + today + ", and " + today.plusYears(LONGEST_YEARS) + ".");
        }
        if ((subject == OverruleView.Subject.STRING) != (unit == null)) {
            throw new Refused("Name the jar or link by its number; a string has none.");
        }
    }
}
