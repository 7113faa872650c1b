package org.ohmstead.reports;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ohmstead.programme.rules.DutyState;

/** How often each state stands for one requirement in one area. */
public record ComplianceTotal(
        String area, String pack, String requirement, String activity, String clause, Map<DutyState, Long> counts) {

    public ComplianceTotal {
        counts = Map.copyOf(counts);
    }

    /** In the order of the lines. */
    static List<ComplianceTotal> of(Collection<ComplianceLine> lines) {
        Map<List<String>, ComplianceTotal> totals = new LinkedHashMap<>();
        for (ComplianceLine line : lines) {
            List<String> key = List.of(line.area(), line.pack(), line.requirement());
            totals.merge(key, first(line), ComplianceTotal::plus);
        }
        return totals.values().stream()
                .sorted(Comparator.comparing(ComplianceTotal::area)
                        .thenComparing(ComplianceTotal::pack)
                        .thenComparing(ComplianceTotal::requirement))
                .toList();
    }

    /** The areas added up, in the order of pack and requirement. */
    static List<ComplianceTotal> withoutAreas(Collection<ComplianceTotal> totals) {
        Map<List<String>, ComplianceTotal> sums = new TreeMap<>(
                Comparator.comparing((List<String> key) -> key.get(0)).thenComparing(key -> key.get(1)));
        totals.forEach(total -> sums.merge(List.of(total.pack(), total.requirement()), total, ComplianceTotal::plus));
        return sums.values().stream()
                .map(sum -> new ComplianceTotal(
                        "", sum.pack(), sum.requirement(), sum.activity(), sum.clause(), sum.counts()))
                .toList();
    }

    public long count(DutyState state) {
        return counts.getOrDefault(state, 0L);
    }

    /** Without those that are not yet due and those that are monitored instead. */
    public long judged() {
        return count(DutyState.ON_TIME) + count(DutyState.LATE) + count(DutyState.MISSED) + count(DutyState.WAIVED);
    }

    private static ComplianceTotal first(ComplianceLine line) {
        return new ComplianceTotal(
                line.area(), line.pack(), line.requirement(), line.activity(), line.clause(), Map.of(line.state(), 1L));
    }

    private ComplianceTotal plus(ComplianceTotal other) {
        Map<DutyState, Long> sum = new EnumMap<>(DutyState.class);
        sum.putAll(counts);
        other.counts.forEach((state, count) -> sum.merge(state, count, Long::sum));
        return new ComplianceTotal(area, pack, requirement, activity, clause, sum);
    }
}
