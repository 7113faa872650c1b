package org.ohmstead.intake.check;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a string before its new survey is looked at.
 *
 * @param zone of the site
 * @param straps registered straps per link, ordinals 0..N
 * @param last the latest survey before the new one, if any
 * @param baseline the survey that comparisons start from, if any
 * @param earlier when the string's standing surveys were taken
 * @param recent the last few surveys before the new one, oldest first
 * @param neighbours the last few surveys of the site's other strings of as many jars, by the string's title
 * @param now the present
 */
public record Expectation(
        ZoneId zone,
        int positions,
        int[] straps,
        ExpectedJar jar,
        LocalDate inServiceOn,
        @Nullable EarlierSurvey last,
        @Nullable EarlierSurvey baseline,
        List<Instant> earlier,
        List<EarlierSurvey> recent,
        Map<String, List<EarlierSurvey>> neighbours,
        Instant now) {

    public Expectation {
        earlier = List.copyOf(earlier);
        recent = List.copyOf(recent);
        neighbours = Map.copyOf(neighbours);
        if (straps.length != positions + 1) {
            throw new IllegalArgumentException(
                    positions + " jars have " + (positions + 1) + " links, not " + straps.length);
        }
    }
}
