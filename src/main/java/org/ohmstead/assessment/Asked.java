package org.ohmstead.assessment;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmstead.assessment.OverruleView.Subject;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.kernel.Urgency;

/**
 * What a string asks of people once they have been heard: the engine's urgencies, save where one is overruled. A string
 * asks the most that is left of its jars and links and of itself.
 *
 * @param inForce what is overruled today
 */
public record Asked(StringJudgement judgement, List<OverruleView> inForce) {

    static Asked of(StringJudgement judgement, List<OverruleView> all, LocalDate today) {
        return new Asked(
                judgement,
                all.stream()
                        .filter(one -> one.holdsOn(today) && isStillThere(judgement, one))
                        .toList());
    }

    private static boolean isStillThere(StringJudgement judgement, OverruleView one) {
        return switch (one.subject()) {
            case STRING -> true;
            case JAR ->
                judgement.jars().stream()
                        .anyMatch(jar -> one.isAbout(Subject.JAR, jar.position())
                                && jar.sittingSince().equals(one.unitSince()));
            case LINK ->
                judgement.links().stream()
                        .anyMatch(link -> one.isAbout(Subject.LINK, link.ordinal())
                                && link.madeOn().equals(one.unitSince()));
        };
    }

    public Optional<OverruleView> ofString() {
        return inForce.stream().filter(one -> one.subject() == Subject.STRING).findFirst();
    }

    public Optional<OverruleView> ofJar(int position) {
        return inForce.stream()
                .filter(one -> one.isAbout(Subject.JAR, position))
                .findFirst();
    }

    public Optional<OverruleView> ofLink(int ordinal) {
        return inForce.stream()
                .filter(one -> one.isAbout(Subject.LINK, ordinal))
                .findFirst();
    }

    public Urgency urgency() {
        return ofString().map(OverruleView::urgency).orElseGet(this::ofParts);
    }

    private Urgency ofParts() {
        return Stream.of(
                        judgement.reasons().stream().map(Reason::asks),
                        judgement.jars().stream().map(this::urgency),
                        judgement.links().stream().map(this::urgency))
                .flatMap(urgencies -> urgencies)
                .reduce(Urgency.CLEAR, Urgency::or);
    }

    public Urgency urgency(JarJudgement jar) {
        return ofJar(jar.position()).map(OverruleView::urgency).orElse(jar.urgency());
    }

    public Urgency urgency(LinkJudgement link) {
        return ofLink(link.ordinal()).map(OverruleView::urgency).orElse(link.urgency());
    }

    /**
     * The engine's headline with what people decided.
     *
     * @param byEngine what it asks by itself
     */
    public String headline(Urgency byEngine, String headline) {
        return ofString()
                .map(one -> "Overruled until " + one.lastDay() + " (the engine says " + byEngine.word() + "): "
                        + one.reason())
                .orElseGet(() -> headline + " Overruled in part: "
                        + inForce.stream()
                                .map(one -> one.subject().name().toLowerCase(Locale.ROOT) + " " + one.unit())
                                .collect(Collectors.joining(", "))
                        + ".");
    }
}
