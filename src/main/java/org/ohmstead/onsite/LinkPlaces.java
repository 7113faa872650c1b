package org.ohmstead.onsite;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.LinkView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.LinkName;
import org.ohmstead.ledger.SurveyRecord;

/** The links of a walk. */
final class LinkPlaces {

    private final StringBlueprint blueprint;
    private final List<SurveyRecord> surveys;
    private final @Nullable StringJudgement judgement;
    private final Limits limits;

    LinkPlaces(
            StringBlueprint blueprint, List<SurveyRecord> surveys, @Nullable StringJudgement judgement, Limits limits) {
        this.blueprint = blueprint;
        this.surveys = surveys;
        this.judgement = judgement;
        this.limits = limits;
    }

    List<LinkPlace> all() {
        return blueprint.links().stream().map(this::place).toList();
    }

    private LinkPlace place(LinkView link) {
        LinkJudgement judged = judged(link.ordinal());
        Double conductor = judged == null ? null : judged.conductorMicroohms();
        LinkEdges edges = new LinkEdges(link.kind().isCable(), conductor == null ? 0 : conductor, limits);
        Double baseline = judged == null ? null : baseline(judged);
        Double average = average(link);
        int positions = blueprint.string().positions();
        return new LinkPlace(
                link.ordinal(),
                LinkName.of(link.ordinal(), positions),
                LinkWords.between(link.ordinal(), positions),
                link.kind().words(),
                link.straps(),
                judged == null ? null : judged.readOn(),
                judged == null ? List.of() : straps(link, judged.readOn()),
                judged == null ? null : Rounded.orNull(judged.combinedMicroohms()),
                edges.whole(baseline),
                edges.overBaseline(baseline),
                edges.whole(average),
                edges.overKind(average),
                judged == null ? null : Places.asks(judged.urgency(), judged.reasons()));
    }

    private @Nullable LinkJudgement judged(int ordinal) {
        return judgement == null
                ? null
                : judgement.links().stream()
                        .filter(link -> link.ordinal() == ordinal)
                        .findFirst()
                        .orElse(null);
    }

    /** The first net reading since the joint was made, which the last one still is while there is no other. */
    private static @Nullable Double baseline(LinkJudgement judged) {
        if (judged.cableDominates()) {
            return null;
        }
        return judged.baseline() == null
                ? judged.netMicroohms()
                : (Double) judged.baseline().value();
    }

    /** Of links of the same kind and number of straps; a joint just remade has no reading to take it from itself. */
    private @Nullable Double average(LinkView like) {
        return judgement == null
                ? null
                : blueprint.links().stream()
                        .filter(link -> link.kind() == like.kind() && link.straps() == like.straps())
                        .map(link -> judged(link.ordinal()))
                        .filter(Objects::nonNull)
                        .map(LinkJudgement::kindAverageMicroohms)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
    }

    private List<@Nullable Double> straps(LinkView link, @Nullable LocalDate readOn) {
        return surveys.stream()
                .filter(survey -> survey.facts().takenOn().equals(readOn))
                .reduce((first, second) -> second)
                .map(survey -> survey.readings().linkMicroohms()[link.ordinal()])
                .map(read -> Arrays.stream(read)
                        .limit(link.straps())
                        .mapToObj(Rounded::orNull)
                        .toList())
                .orElse(List.of());
    }
}
