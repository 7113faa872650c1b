package org.ohmstead.chart;

import java.util.List;

/**
 * A string as it stands in its rack.
 *
 * @param tiers jars per tier in the order they are walked; the walk turns round at the end of each
 * @param jars in order of position
 * @param links in order, one more than jars
 */
public record RackPlan(List<Integer> tiers, List<RackJar> jars, List<RackLink> links) {

    public RackPlan {
        tiers = List.copyOf(tiers);
        jars = List.copyOf(jars);
        links = List.copyOf(links);
        int seats = tiers.stream().mapToInt(Integer::intValue).sum();
        if (jars.isEmpty() || seats != jars.size() || links.size() != jars.size() + 1) {
            throw new IllegalArgumentException(
                    "Tiers hold " + seats + ", jars are " + jars.size() + ", links are " + links.size());
        }
    }
}
