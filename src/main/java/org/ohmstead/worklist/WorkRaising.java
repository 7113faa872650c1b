package org.ohmstead.worklist;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ohmstead.assessment.AssessmentView;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.WorkPlaces.Place;
import org.ohmstead.worklist.model.Seen;
import org.ohmstead.worklist.model.Source;
import org.ohmstead.worklist.model.Step;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkItem;
import org.ohmstead.worklist.model.WorkKey;
import org.ohmstead.worklist.model.WorkKind;
import org.springframework.stereotype.Component;

/** Work that a person asks for. */
@Component
class WorkRaising {

    private final WorkTable table;
    private final Assessments assessments;

    WorkRaising(WorkTable table, Assessments assessments) {
        this.table = table;
        this.assessments = assessments;
    }

    /** While the string is locked. */
    Step raise(NewWork wanted, Place place, String reason) {
        if (place.outOfServiceSince() != null) {
            throw new Refused("The string was retired on " + place.retiredOn() + ": nothing is to be done there.");
        }
        WorkKey key = key(wanted);
        LocalDate by = wanted.by();
        if (wanted.urgency() == Urgency.CLEAR) {
            throw new Refused("Work is asked for as recheck, plan or act; what is clear needs none.");
        }
        if (by != null && by.isBefore(place.today())) {
            throw new Refused("The last day in time is today or later: today is " + place.today() + " at the site.");
        }
        WorkItem.Asked asked = asked(wanted, key.subject(), place, reason);
        Step step = WorkItem.raised(wanted.stringId(), key, place.today(), asked);
        if (table.isOpenElsewhere(step.after())) {
            throw new Conflict("This is on the list already: go on with the item that is open.");
        }
        return step;
    }

    private static WorkKey key(NewWork wanted) {
        if (wanted.kind() == WorkKind.OVERDUE_DUTY) {
            throw new Refused("Overdue duties come from the programme; ask for something else.");
        }
        if (!wanted.kind().suits(wanted.subject())) {
            throw new Refused("\"" + wanted.kind().words() + "\" cannot be asked for of that: links are remade, jars"
                    + " replaced, strings equalised and tested.");
        }
        Integer unit = wanted.unit();
        return new WorkKey(
                wanted.kind(),
                switch (wanted.subject()) {
                    case STRING -> Subject.STRING;
                    case JAR -> Subject.jar(required(unit));
                    case LINK -> Subject.link(required(unit));
                    case DUTY -> throw new Refused("Overdue duties come from the programme.");
                });
    }

    private static int required(@org.jspecify.annotations.Nullable Integer unit) {
        if (unit == null) {
            throw new Refused("Say which jar or link.");
        }
        return unit;
    }

    private WorkItem.Asked asked(NewWork wanted, Subject subject, Place place, String reason) {
        Optional<StringJudgement> judgement =
                assessments.find(wanted.stringId()).map(AssessmentView::judgement);
        Optional<Seen> seen =
                judgement.map(known -> Seen.of(known, place.today(), place.outOfServiceSince(), java.util.List.of()));
        Seen.Unit unit = seen.map(known -> known.units().get(subject)).orElse(null);
        if (unit == null) {
            throw new Refused("The string has no " + (subject.kind() == Subject.Kind.LINK ? "link " : "jar ")
                    + subject.unit() + ".");
        }
        Long survey = seen.map(Seen::surveyId).orElse(null);
        return new WorkItem.Asked(
                unit.since(),
                wanted.urgency(),
                wanted.by(),
                reason,
                Source.PERSON,
                survey,
                survey == null
                        ? null
                        : Objects.requireNonNull(seen.orElse(null)).asOf());
    }
}
