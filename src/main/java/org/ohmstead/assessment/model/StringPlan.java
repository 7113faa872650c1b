package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.List;

/**
 * A string as it was built and is meant to work. Unknown numbers are NaN.
 *
 * @param positions number of jars, N
 * @param links the N + 1 links in order
 * @param floatSetpointVoltsPerCell what the charger is set to at 25 °C
 * @param designLoadAmps the load current the string must carry
 * @param designMinutes for how long
 */
public record StringPlan(
        long stringId,
        JarTypeFacts jarType,
        int positions,
        List<LinkPlan> links,
        double floatSetpointVoltsPerCell,
        double designLoadAmps,
        double designMinutes,
        LocalDate inServiceOn) {

    /** The same built of jars of which something else is known. */
    public StringPlan with(JarTypeFacts known) {
        return new StringPlan(
                stringId,
                known,
                positions,
                links,
                floatSetpointVoltsPerCell,
                designLoadAmps,
                designMinutes,
                inServiceOn);
    }

    public StringPlan {
        links = List.copyOf(links);
        if (links.size() != positions + 1) {
            throw new IllegalArgumentException(
                    "A string of " + positions + " jars has " + (positions + 1) + " links, not " + links.size());
        }
    }
}
