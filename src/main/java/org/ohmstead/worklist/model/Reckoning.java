package org.ohmstead.worklist.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.worklist.model.WorkItem.Asked;
import org.ohmstead.worklist.model.WorkItem.Closing;
import org.ohmstead.worklist.model.WorkItem.Done;

/**
 * Holds the items of a string against what is asked for and what was read: closes, proves and raises. The same once more
 * gives no step. Overdue duties are {@link DutyReckoning}'s.
 */
public final class Reckoning {

    private final long stringId;
    private final Seen seen;
    private final Wants wants;
    private final List<Step> steps = new ArrayList<>();
    private final Set<WorkKey> open = new HashSet<>();

    private Reckoning(long stringId, Seen seen, Wants wants) {
        this.stringId = stringId;
        this.seen = seen;
        this.wants = wants;
    }

    /**
     * The steps to take, in order; items that are new have no id yet.
     *
     * @param items those that are open, and those that persons dismissed
     */
    public static List<Step> of(long stringId, Seen seen, Wants wants, List<WorkItem> items) {
        Reckoning reckoning = new Reckoning(stringId, seen, wants);
        items.stream()
                .filter(item -> item.isOpen() && item.key().kind() != WorkKind.OVERDUE_DUTY)
                .forEach(reckoning::look);
        if (seen.retiredOn() == null) {
            reckoning.raise(items);
        }
        return reckoning.steps;
    }

    private void look(WorkItem item) {
        WorkItem after = followed(item);
        if (after.isOpen()) {
            open.add(after.key());
        }
    }

    private WorkItem followed(WorkItem item) {
        Seen.Unit unit = seen.unit(item.key().subject());
        if (seen.retiredOn() != null) {
            return take(item.dismissByService("The string was retired on " + seen.retiredOn() + ".", null));
        }
        if (unit == null) {
            return take(item.dismissByService("The register has no such jar or link any more.", null));
        }
        if (item.key().kind() == WorkKind.TEST_CAPACITY) {
            return tested(item);
        }
        WorkItem standing = isDoneNoLonger(item, unit)
                ? take(item.notDoneAfterAll("The register does not say so any more."))
                : item;
        WorkItem known = standing.state().isToDo() ? toDo(standing, unit) : standing;
        return known.state() == WorkState.DONE ? done(known, unit) : known;
    }

    private static boolean isDoneNoLonger(WorkItem item, Seen.Unit unit) {
        Done done = item.done();
        return item.state() == WorkState.DONE && done != null && done.byRecord() && !isMadeAnew(item, unit);
    }

    private WorkItem take(Step step) {
        steps.add(step);
        return step.after();
    }

    private WorkItem toDo(WorkItem item, Seen.Unit unit) {
        if (isMadeAnew(item, unit)) {
            return madeAnew(item, Objects.requireNonNull(unit.since()));
        }
        if (item.key().kind() == WorkKind.MEASURE_AGAIN && isReadAgain(item, unit)) {
            return readAgain(item);
        }
        return askedOrNot(item);
    }

    /** Another jar sits there, or the joint was made anew, since it was asked for. */
    private static boolean isMadeAnew(WorkItem item, Seen.Unit unit) {
        LocalDate before = item.asked().since();
        LocalDate since = unit.since();
        LocalDate askedOn = item.asked().on();
        return before != null
                && since != null
                && since.isAfter(before)
                && (askedOn == null || !since.isBefore(askedOn));
    }

    private WorkItem madeAnew(WorkItem item, LocalDate since) {
        return switch (item.key().kind()) {
            case REPLACE_JAR ->
                take(item.doneByFact(
                        new Done(since, "the register", "another jar sits there since " + since, true), null));
            case REMAKE_LINK ->
                take(item.doneByFact(
                        new Done(since, "the register", "the joint was made anew on " + since, true), null));
            case MEASURE_AGAIN, EQUALISE, INVESTIGATE, TEST_CAPACITY, OVERDUE_DUTY ->
                take(item.dismissByService(
                        item.key().subject().kind() == Subject.Kind.JAR
                                ? "The jar left; another one sits there since " + since + "."
                                : "The joint was made anew on " + since + ".",
                        null));
        };
    }

    /** Whether another survey than the one that asked has read it since. */
    private boolean isReadAgain(WorkItem item, Seen.Unit unit) {
        Long survey = seen.surveyId();
        LocalDate askedOn = item.asked().on();
        return survey != null
                && !survey.equals(item.asked().surveyId())
                && seen.asOf().equals(unit.readOn())
                && (askedOn == null || !seen.asOf().isBefore(askedOn));
    }

    private WorkItem readAgain(WorkItem item) {
        Evidence survey = survey();
        Want want = wants.of(item.key());
        if (want != null) {
            return take(item.notCured(
                    asked(want), survey, "Read again in the survey of " + seen.asOf() + ", and it still asks."));
        }
        String excuse = wants.excuse(item.key());
        if (excuse != null) {
            return take(item.dismissByService(excuse, null));
        }
        WorkItem done = take(item.doneByFact(new Done(seen.asOf(), "the survey of " + seen.asOf(), "", true), survey));
        return take(done.prove(survey, "Read again in the survey of " + seen.asOf() + "."));
    }

    private WorkItem askedOrNot(WorkItem item) {
        Want want = wants.of(item.key());
        if (want != null) {
            Asked now = byPerson(item) ? joined(item.asked(), asked(want)) : asked(want);
            return now.equals(item.asked()) ? item : take(item.stillAsked(now));
        }
        String excuse = wants.excuse(item.key());
        if (excuse != null) {
            return take(item.dismissByService(excuse, null));
        }
        return byPerson(item) ? item : take(item.dismissByService(noLongerAsked(item), evidence()));
    }

    private static boolean byPerson(WorkItem item) {
        return item.asked().source() == Source.PERSON;
    }

    /** A person's own words stand, with the stricter of both. */
    private static Asked joined(Asked person, Asked want) {
        LocalDate own = person.by();
        LocalDate by = own != null && want.by() != null && own.isBefore(want.by()) ? own : want.by();
        return new Asked(
                want.since(),
                person.urgency().or(want.urgency()),
                by,
                person.reason(),
                Source.PERSON,
                want.surveyId(),
                want.on());
    }

    private String noLongerAsked(WorkItem item) {
        Long asking = item.asked().surveyId();
        if (Objects.equals(asking, seen.surveyId())) {
            return "No longer asked: nothing was read since, but the string was judged anew with what is known now.";
        }
        LocalDate askedOn = item.asked().on();
        return askedOn != null && seen.asOf().isBefore(askedOn)
                ? "No longer asked: the survey of " + askedOn + " that asked for it does not count any more."
                : "No longer asked since the survey of " + seen.asOf() + ".";
    }

    private WorkItem done(WorkItem item, Seen.Unit unit) {
        LocalDate doneOn = Objects.requireNonNull(item.done()).on();
        if (!isReadAgain(item, unit) || seen.asOf().isBefore(doneOn)) {
            return item;
        }
        Want want = wants.of(item.key());
        if (want != null) {
            return take(item.notCured(
                    asked(want), survey(), "The survey of " + seen.asOf() + " finds it not cured by that."));
        }
        return isInDoubt(item, unit)
                ? item
                : take(item.prove(survey(), "The survey of " + seen.asOf() + " no longer asks for it."));
    }

    /** An overrule proves nothing, nor does a reading that is itself to be read again, nor one of the old jar. */
    private boolean isInDoubt(WorkItem item, Seen.Unit unit) {
        return wants.excuse(item.key()) != null
                || wants.of(new WorkKey(WorkKind.MEASURE_AGAIN, item.key().subject())) != null
                || (item.key().kind() == WorkKind.REPLACE_JAR && !isMadeAnew(item, unit));
    }

    private WorkItem tested(WorkItem item) {
        return seen.tests().stream()
                .filter(test -> !test.on().isBefore(item.raisedOn()))
                .findFirst()
                .map(test -> {
                    Evidence evidence = new Evidence(Evidence.Kind.CAPACITY_TEST, test.id());
                    WorkItem done = item.state() == WorkState.DONE
                            ? item
                            : take(item.doneByFact(new Done(test.on(), "the capacity test", "", true), evidence));
                    return take(done.prove(evidence, "Tested on " + test.on() + "."));
                })
                .orElseGet(() -> item.state().isToDo() ? askedOrNot(item) : item);
    }

    private void raise(List<WorkItem> items) {
        for (Want want : wants.asked()) {
            if (want.raises() && !open.contains(want.key()) && !isQuiet(want, items)) {
                take(WorkItem.raised(stringId, want.key(), seen.today(), asked(want)));
            }
        }
    }

    private boolean isQuiet(Want want, List<WorkItem> items) {
        return items.stream()
                .filter(item ->
                        item.state() == WorkState.DISMISSED && item.key().equals(want.key()))
                .anyMatch(item -> keepsQuiet(item, want));
    }

    private boolean keepsQuiet(WorkItem item, Want want) {
        Closing closing = item.closing();
        if (closing == null
                || closing.byService()
                || !Objects.equals(item.asked().since(), want.since())) {
            return false;
        }
        LocalDate until = closing.quietUntil();
        return until == null
                ? Objects.equals(item.asked().surveyId(), seen.surveyId())
                : !seen.today().isAfter(until);
    }

    private Asked asked(Want want) {
        return new Asked(
                want.since(),
                want.urgency(),
                want.by(),
                want.reason(),
                want.source(),
                seen.surveyId(),
                seen.surveyId() == null ? null : seen.asOf());
    }

    private Evidence survey() {
        return Evidence.survey(Objects.requireNonNull(seen.surveyId()));
    }

    private @Nullable Evidence evidence() {
        return seen.surveyId() == null ? null : survey();
    }
}
