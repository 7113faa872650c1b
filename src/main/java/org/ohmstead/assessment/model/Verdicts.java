package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
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
        List<Reason> said = new ArrayList<>();
        for (BiFunction<C, Limits, @Nullable Reason> rule : rules) {
            Reason reason = rule.apply(subject, limits);
            if (reason != null) {
                said.add(reason);
            }
        }
        said.sort(Comparator.comparing(Reason::asks).reversed());
        return said;
    }

    /** The most urgent first; between equals the practitioner's rules speak before the forecast. */
    static List<Reason> joined(List<Reason> rules, List<Reason> forecast) {
        return forecast.isEmpty()
                ? rules
                : Stream.concat(rules.stream(), forecast.stream())
                        .sorted(Comparator.comparing(Reason::asks).reversed())
                        .toList();
    }

    /** The most that any reason asks. */
    static Urgency urgency(Collection<Reason> reasons) {
        Urgency most = Urgency.CLEAR;
        for (Reason reason : reasons) {
            most = most.or(reason.asks());
        }
        return most;
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
