package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * What is known of one requirement at one string.
 *
 * @param since the first span is counted from here unless something was done before
 * @param history whatever was done at the string, in any order; what does not concern the requirement does no harm
 */
public record DutyCase(
        LocalDate since,
        List<Evidence> history,
        List<Election> elections,
        List<OwnInterval> ownIntervals,
        List<Waiver> waivers) {

    public DutyCase {
        history = history.stream()
                .sorted(Comparator.comparing(Evidence::doneOn)
                        .thenComparing(Evidence::kind)
                        .thenComparing(Evidence::recordId))
                .toList();
        elections =
                elections.stream().sorted(Comparator.comparing(Election::from)).toList();
        ownIntervals = ownIntervals.stream()
                .sorted(Comparator.comparing(OwnInterval::from))
                .toList();
        waivers = List.copyOf(waivers);
    }

    public static DutyCase of(LocalDate since, List<Evidence> history) {
        return new DutyCase(since, history, List.of(), List.of(), List.of());
    }

    /** What was known at the end of that day. */
    DutyCase asOf(LocalDate day) {
        return new DutyCase(
                since,
                history.stream().filter(done -> !done.doneOn().isAfter(day)).toList(),
                elections.stream()
                        .filter(election -> !election.from().isAfter(day))
                        .toList(),
                ownIntervals.stream().filter(own -> !own.from().isAfter(day)).toList(),
                waivers.stream()
                        .filter(waiver -> !waiver.grantedOn().isAfter(day))
                        .map(waiver -> waiver.asOf(day))
                        .toList());
    }
}
