package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/** Puts the reasons of single rules together. */
final class Verdicts {

    private Verdicts() {}

    /** What every rule that has something to say says, the most urgent first. */
    static <C> List<Reason> reasons(C subject, Limits limits, List<BiFunction<C, Limits, @Nullable Reason>> rules) {
        return rules.stream()
                .map(rule -> rule.apply(subject, limits))
                .filter(Objects::nonNull)
                .sorted(Comparator.comparing(Reason::asks).reversed())
                .toList();
    }

    /** The most urgent first; between equals the practitioner's rules speak before the forecast. */
    static List<Reason> joined(List<Reason> rules, List<Reason> forecast) {
        return Stream.concat(rules.stream(), forecast.stream())
                .sorted(Comparator.comparing(Reason::asks).reversed())
                .toList();
    }

    /** The most that any reason asks. */
    static Urgency urgency(Collection<Reason> reasons) {
        return reasons.stream().map(Reason::asks).reduce(Urgency.CLEAR, Urgency::or);
    }

    /** The earliest day by which a reason wants another reading. */
    static @Nullable LocalDate recheckBy(LocalDate asOf, Stream<Reason> reasons) {
        return reasons.filter(reason -> reason.recheckDays() > 0)
                .map(reason -> asOf.plusDays(reason.recheckDays()))
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Whether the reading before already stood at half the limit or more. */
    static boolean isBorneOut(double before, double limit) {
        return before >= limit / 2;
    }

    static <T> Stream<Reason> of(List<T> judgements, Function<T, List<Reason>> reasons) {
        return judgements.stream().flatMap(judgement -> reasons.apply(judgement).stream());
    }
}
