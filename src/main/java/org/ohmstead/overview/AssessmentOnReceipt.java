package org.ohmstead.overview;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.AssessmentView;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.intake.ReceiptAddition;
import org.ohmstead.kernel.LinkName;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.NextDateView;
import org.ohmstead.programme.Programme;
import org.springframework.stereotype.Component;

/** Tells the crew on the receipt, while still on site, how the string stands now and which units need someone. */
@Component
class AssessmentOnReceipt implements ReceiptAddition {

    private final Assessments assessments;
    private final Programme programme;

    AssessmentOnReceipt(Assessments assessments, Programme programme) {
        this.assessments = assessments;
        this.programme = programme;
    }

    /** @param asks the jars and links that ask for something, jars first; everything else is at {@code details} */
    record Standing(
            Urgency urgency,
            String headline,
            LocalDate asOf,
            @Nullable LocalDate nextVisitBy,
            @Nullable String nextVisitWhy,
            List<Unit> asks,
            String details) {}

    /** A jar or link in need. */
    record Unit(String unit, Urgency urgency, List<String> reasons) {}

    @Override
    public String key() {
        return "assessment";
    }

    @Override
    public Object of(long stringId) {
        StringJudgement judgement =
                assessments.find(stringId).map(AssessmentView::judgement).orElseThrow();
        Optional<NextDateView> next = programme.findNextDate(stringId);
        return new Standing(
                judgement.urgency(),
                judgement.headline(),
                judgement.asOf(),
                next.map(NextDateView::dueOn).orElse(null),
                next.map(NextDateView::reason).orElse(null),
                Stream.concat(jars(judgement), links(judgement)).toList(),
                "/api/strings/" + stringId + "/assessment");
    }

    private static Stream<Unit> jars(StringJudgement judgement) {
        return judgement.jars().stream()
                .filter(jar -> jar.urgency() != Urgency.CLEAR)
                .map((JarJudgement jar) -> new Unit("jar " + jar.position(), jar.urgency(), words(jar.reasons())));
    }

    private static Stream<Unit> links(StringJudgement judgement) {
        return judgement.links().stream()
                .filter(link -> link.urgency() != Urgency.CLEAR)
                .map((LinkJudgement link) -> new Unit(
                        LinkName.of(link.ordinal(), judgement.jars().size()), link.urgency(), words(link.reasons())));
    }

    private static List<String> words(List<Reason> reasons) {
        return reasons.stream().map(Reason::words).toList();
    }
}
