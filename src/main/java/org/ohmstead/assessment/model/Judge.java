package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Judges a string from its history by the practitioner's rules. A pure function: the same history and limits always give
 * the same judgement. It speaks of change and of what to do, never of capacity.
 */
public final class Judge {

    /** Raised whenever the same inputs would be judged differently. */
    public static final String ENGINE_VERSION = "rules-3";

    private final Limits limits;

    public Judge(Limits limits) {
        this.limits = limits;
    }

    /** Judges as of the last survey; everything in the history is looked at. */
    public StringJudgement judge(StringHistory history) {
        Panel panel = new Panel(history, limits);
        LinkPanel linkPanel = new LinkPanel(panel, limits);
        List<JarCase> jars = IntStream.rangeClosed(1, history.plan().positions())
                .mapToObj(position -> JarCase.of(panel, position, limits))
                .toList();
        List<LinkCase> links = history.plan().links().stream()
                .map(link -> LinkCase.of(linkPanel, link, limits))
                .toList();
        return judge(StringCase.of(panel, jars, links, limits));
    }

    /** The same judgement with what else was found of its jars and links: urgency, headline, dates and advice follow. */
    public StringJudgement with(
            StringJudgement judgement,
            List<JarJudgement> jars,
            List<LinkJudgement> links,
            List<Doubt> doubts,
            @Nullable RiskDate riskDate) {
        List<Reason> all = all(judgement.reasons(), jars, links);
        return new StringJudgement(
                judgement.stringId(),
                judgement.asOf(),
                judgement.surveyId(),
                judgement.limitsVersion(),
                Verdicts.urgency(all),
                Headline.of(judgement.reasons(), jars, links),
                Verdicts.recheckBy(judgement.asOf(), all.stream()),
                riskDate,
                judgement.figures(),
                judgement.reasons(),
                doubts,
                new Adviser(jars, links, judgement.reasons(), judgement.figures(), limits).advise(),
                jars,
                links);
    }

    private static List<Reason> all(List<Reason> reasons, List<JarJudgement> jars, List<LinkJudgement> links) {
        return Stream.of(
                        reasons.stream(),
                        Verdicts.of(jars, JarJudgement::reasons),
                        Verdicts.of(links, LinkJudgement::reasons))
                .flatMap(stream -> stream)
                .toList();
    }

    private StringJudgement judge(StringCase string) {
        List<JarJudgement> jars =
                string.jars().stream().map(jar -> JarRules.judge(jar, limits)).toList();
        List<LinkJudgement> links = string.links().stream()
                .map(link -> LinkRules.judge(link, limits))
                .toList();
        List<Reason> reasons = StringRules.judge(string, limits);
        StringFigures figures = Figures.of(string, limits);
        Panel panel = string.panel();
        LocalDate asOf = StringCase.asOf(panel);
        List<Reason> all = all(reasons, jars, links);
        return new StringJudgement(
                panel.history().plan().stringId(),
                asOf,
                panel.last() < 0 ? null : panel.survey(panel.last()).surveyId(),
                limits.version(),
                Verdicts.urgency(all),
                Headline.of(reasons, jars, links),
                Verdicts.recheckBy(asOf, all.stream()),
                null,
                figures,
                reasons,
                Doubts.of(string, limits),
                new Adviser(jars, links, reasons, figures, limits).advise(),
                jars,
                links);
    }
}
