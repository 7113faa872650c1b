package org.ohmstead.reports;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmstead.programme.rules.DutyState;

/**
 * How often each state stands in one area, or under one rule pack.
 *
 * @param requirements the same for each requirement, the areas added up
 */
public record ComplianceGroup(String name, Map<DutyState, Long> counts, List<ComplianceTotal> requirements) {

    public ComplianceGroup {
        counts = Map.copyOf(counts);
        requirements = List.copyOf(requirements);
    }

    /** By name. */
    static List<ComplianceGroup> of(Collection<ComplianceTotal> totals, Function<ComplianceTotal, String> name) {
        Map<String, List<ComplianceTotal>> groups =
                totals.stream().collect(Collectors.groupingBy(name, TreeMap::new, Collectors.toList()));
        return groups.entrySet().stream()
                .map(group -> new ComplianceGroup(
                        group.getKey(), sum(group.getValue()), ComplianceTotal.withoutAreas(group.getValue())))
                .toList();
    }

    private static Map<DutyState, Long> sum(List<ComplianceTotal> totals) {
        Map<DutyState, Long> sum = new EnumMap<>(DutyState.class);
        totals.forEach(total -> total.counts().forEach((state, count) -> sum.merge(state, count, Long::sum)));
        return sum;
    }

    public long count(DutyState state) {
        return counts.getOrDefault(state, 0L);
    }

    /** "812 on time, 3 late": what there is. */
    public String words() {
        return java.util.Arrays.stream(DutyState.values())
                .filter(state -> count(state) > 0)
                .map(state -> count(state) + " " + state.words())
                .collect(Collectors.joining(", "));
    }
}
