package org.ohmstead.assessment.model.estate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The replacements to come of a group of jars. Ranges of groups don't add up; each group has its own.
 *
 * @param area code, null for all areas
 * @param jarType code, null for all types
 * @param jars in use
 * @param unforeseen of these, those of which nothing can be said: never read, and no life curve of their type
 * @param already more likely than not past their limit today
 * @param byQuarter those that pass it in each quarter
 * @param inAll both together
 */
public record ForecastLine(
        @Nullable String area,
        @Nullable String jarType,
        int jars,
        int unforeseen,
        Expected already,
        List<Expected> byQuarter,
        Expected inAll) {

    public ForecastLine {
        byQuarter = List.copyOf(byQuarter);
    }
}
