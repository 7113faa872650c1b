package org.ohmstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.check.CheckedSurvey;
import org.ohmstead.intake.check.Checks;
import org.ohmstead.intake.check.Expectation;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.check.Thresholds;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.repair.AssignTo;
import org.ohmstead.intake.repair.Proposal;
import org.ohmstead.intake.repair.Proposals;
import org.ohmstead.intake.repair.Step;
import org.ohmstead.intake.repair.StepKind;
import org.springframework.stereotype.Component;

/** Finds the repairs that a held survey asks for, and what each would come to. Nothing is kept. */
@Component
class Rehearsal {

    private static final int MOST_OFFERS = 8;

    private final Stages stages;
    private final FleetRegister register;

    Rehearsal(Stages stages, FleetRegister register) {
        this.stages = stages;
        this.register = register;
    }

    List<Offer> offers(Passage now) {
        return Stream.concat(strings(now).stream(), proposals(now).stream())
                .limit(MOST_OFFERS)
                .map(proposal -> offer(now, proposal.because(), proposal.step()))
                .toList();
    }

    Offer offer(Passage now, RemarkCode because, Step step) {
        Passage then = stages.rehearse(now.again(step));
        return new Offer(
                because,
                StepKind.of(step),
                step,
                step.words(),
                outcome(then),
                left(now.remarks(), then.remarks()),
                left(then.remarks(), now.remarks()),
                BenchLines.moved(now, then));
    }

    static Outcome outcome(Passage passage) {
        return new Outcome(passage.verdict(), passage.remarks(), BenchLines.misfitPercent(passage));
    }

    private static List<Remark> left(List<Remark> some, List<Remark> others) {
        return some.stream().filter(remark -> !others.contains(remark)).toList();
    }

    private static List<Proposal> proposals(Passage now) {
        CheckedSurvey checked = now.checkedSurvey();
        StringBlueprint blueprint = now.blueprint();
        if (checked == null || blueprint == null) {
            return List.of();
        }
        SurveySheet sheet = Objects.requireNonNull(now.sheet());
        Expectation expected = Objects.requireNonNull(now.expectation());
        return Proposals.of(
                sheet,
                Repairing.ground(blueprint),
                checked,
                other -> Checks.check(other, expected, Thresholds.defaults()));
    }

    /** Where sheet and upload name different strings, either may be right. */
    private List<Proposal> strings(Passage now) {
        SurveySheet sheet = now.sheet();
        Long claimed = now.handover().claimedStringId();
        List<Proposal> proposals = new ArrayList<>();
        for (Remark remark : now.remarks()) {
            boolean unsure = remark.code() == RemarkCode.STRING_NOT_AS_CLAIMED;
            if (claimed != null && (unsure || remark.code() == RemarkCode.STRING_UNKNOWN)) {
                var string = register.string(claimed);
                proposals.add(new Proposal(remark.code(), new AssignTo(string.siteCode(), string.name())));
            }
            if (unsure && sheet != null) {
                SheetFacts facts = sheet.facts();
                proposals.add(new Proposal(remark.code(), new AssignTo(facts.site(), facts.string())));
            }
        }
        return proposals;
    }
}
