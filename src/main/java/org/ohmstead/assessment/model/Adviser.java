package org.ohmstead.assessment.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.ohmstead.kernel.Urgency;

/** Turns the reasons of jars, links and string into advice. */
final class Adviser {

    private final List<JarJudgement> jars;
    private final List<LinkJudgement> links;
    private final List<Reason> reasons;
    private final StringFigures figures;
    private final Limits limits;

    Adviser(
            List<JarJudgement> jars,
            List<LinkJudgement> links,
            List<Reason> reasons,
            StringFigures figures,
            Limits limits) {
        this.jars = jars;
        this.links = links;
        this.reasons = reasons;
        this.figures = figures;
        this.limits = limits;
    }

    List<Advice> advise() {
        return Stream.of(measureAgain(), remakeLinks(), replaceJars(), adjustCharger(), testCapacity(), renew())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Advice> measureAgain() {
        List<String> what = new ArrayList<>();
        addUnits(what, "jar", ordinals(jars, JarJudgement::urgency, JarJudgement::position, Urgency.RECHECK));
        addUnits(what, "link", ordinals(links, LinkJudgement::urgency, LinkJudgement::ordinal, Urgency.RECHECK));
        return what.isEmpty()
                ? Optional.empty()
                : Optional.of(new Advice(
                        Advice.Kind.MEASURE_AGAIN,
                        "A finding that one reading alone supports is read again before anyone works on it.",
                        "Read again: " + String.join("; ", what) + "."));
    }

    private Optional<Advice> remakeLinks() {
        return units(ordinals(links, LinkJudgement::urgency, LinkJudgement::ordinal, Urgency.PLAN, Urgency.ACT), "link")
                .map(units -> new Advice(
                        Advice.Kind.REMAKE_LINKS,
                        "A link that stands over its limit in two readings is cleaned, remade and read as left.",
                        "Remake " + units + " with charger and load off, then read as left."));
    }

    private Optional<Advice> replaceJars() {
        if (share() >= limits.of(Limit.RENEW_SHARE)) {
            return Optional.empty();
        }
        return units(troubledJars(), "jar")
                .map(units -> new Advice(
                        Advice.Kind.REPLACE_JARS,
                        "A jar that stands over its limit in two readings is tested alone or replaced.",
                        "Test alone or replace " + units + "."));
    }

    private Optional<Advice> adjustCharger() {
        return has(Rule.STRING_FLOAT) || has(Rule.STRING_RIPPLE)
                ? Optional.of(new Advice(
                        Advice.Kind.ADJUST_CHARGER,
                        "Float voltage off its set-point or ripple over its limit is a matter of the charger.",
                        "Check the charger's float setting, temperature compensation and filter."))
                : Optional.empty();
    }

    private Optional<Advice> testCapacity() {
        boolean old = figures.lifeUsed() != null && figures.lifeUsed() >= limits.of(Limit.LIFE_TEST);
        boolean wornTogether = has(Rule.STRING_RISEN) || share() >= limits.of(Limit.RENEW_SHARE);
        return old || wornTogether
                ? Optional.of(new Advice(
                        Advice.Kind.TEST_CAPACITY,
                        "A string past " + Words.percent(limits.of(Limit.LIFE_TEST))
                                + " of its expected life, or risen as a whole, is tested: only that shows capacity.",
                        "Test the string's capacity."))
                : Optional.empty();
    }

    private Optional<Advice> renew() {
        boolean past = figures.lifeUsed() != null && figures.lifeUsed() >= 1;
        return past && share() >= limits.of(Limit.RENEW_SHARE)
                ? Optional.of(new Advice(
                        Advice.Kind.RENEW_STRING,
                        "A string past its expected life with " + Words.percent(limits.of(Limit.RENEW_SHARE))
                                + " of its jars over their limit is renewed as a whole.",
                        "Plan to renew the string: " + troubledJars().size() + " of " + jars.size()
                                + " jars are over their limit."))
                : Optional.empty();
    }

    private List<Integer> troubledJars() {
        return ordinals(jars, JarJudgement::urgency, JarJudgement::position, Urgency.PLAN, Urgency.ACT);
    }

    private double share() {
        return (double) troubledJars().size() / jars.size();
    }

    private boolean has(Rule rule) {
        return reasons.stream().anyMatch(reason -> reason.rule() == rule && reason.asks() != Urgency.CLEAR);
    }

    private static <T> List<Integer> ordinals(
            List<T> units, Function<T, Urgency> urgency, ToIntFunction<T> ordinal, Urgency... wanted) {
        return units.stream()
                .filter(unit -> List.of(wanted).contains(urgency.apply(unit)))
                .map(ordinal::applyAsInt)
                .toList();
    }

    private static void addUnits(List<String> what, String name, List<Integer> numbers) {
        units(numbers, name).ifPresent(what::add);
    }

    private static Optional<String> units(List<Integer> numbers, String name) {
        return numbers.isEmpty() ? Optional.empty() : Optional.of(name + " " + Words.list(numbers));
    }
}
