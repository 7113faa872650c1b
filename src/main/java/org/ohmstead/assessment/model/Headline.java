package org.ohmstead.assessment.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmstead.kernel.Urgency;

/** The one sentence that says what a string asks of people. */
final class Headline {

    private Headline() {}

    static String of(List<Reason> reasons, List<JarJudgement> jars, List<LinkJudgement> links) {
        Urgency worst = Verdicts.urgency(reasons)
                .or(worst(jars.stream().map(JarJudgement::urgency)))
                .or(worst(links.stream().map(LinkJudgement::urgency)));
        return worst == Urgency.CLEAR ? clear(jars) : asking(worst, reasons, jars, links);
    }

    private static Urgency worst(Stream<Urgency> urgencies) {
        return urgencies.reduce(Urgency.CLEAR, Urgency::or);
    }

    private static String clear(List<JarJudgement> jars) {
        long read = jars.stream().filter(jar -> jar.ohmic() != null).count();
        return read == jars.size()
                ? "Nothing asks for attention in " + read + " jars and their links."
                : "Nothing asks for attention; " + read + " of " + jars.size() + " jars have been read.";
    }

    private static String asking(
            Urgency worst, List<Reason> reasons, List<JarJudgement> jars, List<LinkJudgement> links) {
        String first = worstJar(worst, jars)
                .or(() -> worstLink(worst, links))
                .orElseGet(() -> reasons.get(0).words());
        return worst.word() + ": " + first + others(worst, jars, links);
    }

    private static Optional<String> worstJar(Urgency worst, List<JarJudgement> jars) {
        return jars.stream()
                .filter(jar -> jar.urgency() == worst)
                .max(Comparator.comparingDouble(jar -> jar.changeOnBaseline() == null ? 0 : jar.changeOnBaseline()))
                .map(jar ->
                        "jar " + jar.position() + " – " + jar.reasons().get(0).words());
    }

    private static Optional<String> worstLink(Urgency worst, List<LinkJudgement> links) {
        return links.stream()
                .filter(link -> link.urgency() == worst)
                .max(Comparator.comparingDouble(link -> link.changeOnBaseline() == null ? 0 : link.changeOnBaseline()))
                .map(link ->
                        "link " + link.ordinal() + " – " + link.reasons().get(0).words());
    }

    private static String others(Urgency worst, List<JarJudgement> jars, List<LinkJudgement> links) {
        long count = Stream.concat(
                                jars.stream().map(JarJudgement::urgency),
                                links.stream().map(LinkJudgement::urgency))
                        .filter(urgency -> urgency == worst)
                        .count()
                - 1;
        return count > 0 ? " And " + count + " more." : "";
    }
}
