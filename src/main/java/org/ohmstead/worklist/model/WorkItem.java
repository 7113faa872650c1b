package org.ohmstead.worklist.model;

import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.WorkEvent.Kind;

/**
 * Something to do, and how far it is. Every step gives the item after it with the event that says so; a step that the state
 * does not allow throws {@link Conflict} with what to do instead.
 *
 * @param id 0 while it is not stored
 * @param done null while nobody reported it done
 * @param proof only when proven
 * @param closing only when dismissed
 */
public record WorkItem(
        long id,
        long stringId,
        WorkKey key,
        LocalDate raisedOn,
        WorkState state,
        Asked asked,
        Plan plan,
        @Nullable Done done,
        @Nullable Evidence proof,
        @Nullable Closing closing) {

    /**
     * What is asked for, as it was asked last.
     *
     * @param since see {@link Want}
     * @param by null when a person named no day
     * @param surveyId the survey that asked; null where none did
     * @param on that survey's day
     */
    public record Asked(
            @Nullable LocalDate since,
            Urgency urgency,
            @Nullable LocalDate by,
            String reason,
            Source source,
            @Nullable Long surveyId,
            @Nullable LocalDate on) {}

    /** Who does it and when; nothing of it need be known. */
    public record Plan(
            String assignee,
            @Nullable LocalDate on,
            @Nullable Long roundId) {

        public static final Plan NONE = new Plan("", null, null);

        public boolean isEmpty() {
            return assignee.isEmpty() && on == null && roundId == null;
        }
    }

    /** @param byRecord whether a survey, a test or the register says so and not a person's report */
    public record Done(LocalDate on, String by, String note, boolean byRecord) {}

    /** @param quietUntil a person's dismissal holds so long; null until a later survey asks again */
    public record Closing(
            String reason, boolean byService, @Nullable LocalDate quietUntil) {}

    public static Step raised(long stringId, WorkKey key, LocalDate on, Asked asked) {
        WorkItem item = new WorkItem(0, stringId, key, on, WorkState.RAISED, asked, Plan.NONE, null, null, null);
        Long survey = asked.surveyId();
        return new Step(
                item,
                new WorkEvent(
                        Kind.RAISED, asked.by(), asked.reason(), survey == null ? null : Evidence.survey(survey)));
    }

    public boolean isOpen() {
        return state.isOpen();
    }

    public boolean isOverdueOn(LocalDate today) {
        LocalDate by = asked.by();
        return isOpen() && by != null && by.isBefore(today);
    }

    /** Plans it, or plans it otherwise. */
    public Step plan(Plan wanted, String note) {
        requireToDo("planned");
        if (wanted.isEmpty()) {
            throw new Conflict("Say for which day it is planned, with which round, or who does it.");
        }
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, WorkState.PLANNED, asked, wanted, null, null, null),
                new WorkEvent(Kind.PLANNED, wanted.on(), note, null));
    }

    /** Names who does it; says nothing of when. */
    public Step assign(String assignee) {
        requireToDo("given to somebody");
        Plan with = new Plan(assignee, plan.on(), plan.roundId());
        WorkState after = with.isEmpty() ? WorkState.RAISED : state;
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, after, asked, with, null, null, null),
                new WorkEvent(Kind.ASSIGNED, plan.on(), assignee.isEmpty() ? "nobody" : assignee, null));
    }

    /** @param evidence of the register, where it has the same fact */
    public Step reportDone(Done reported, @Nullable Evidence evidence) {
        requireToDo("reported done");
        switch (key.kind()) {
            case MEASURE_AGAIN ->
                throw new Conflict(
                        "Measuring again is done by the survey itself: hand it in, and this is closed by it.");
            case TEST_CAPACITY ->
                throw new Conflict("A capacity test is done by its record: enter it on the string's page, and this is"
                        + " closed by it.");
            case OVERDUE_DUTY ->
                throw new Conflict(
                        "A duty is done by its evidence: record the visit, survey or test, and this is closed"
                                + " by it.");
            case REMAKE_LINK, EQUALISE, INVESTIGATE, REPLACE_JAR -> {}
        }
        LocalDate since = asked.on();
        if (since != null && reported.on().isBefore(since)) {
            throw new Conflict("It was asked for by the survey of " + since + ": work done before, on " + reported.on()
                    + ", does not answer it. Correct the day.");
        }
        return done(reported, evidence);
    }

    /** The same by a fact that stands elsewhere. */
    Step doneByFact(Done fact, @Nullable Evidence evidence) {
        return done(fact, evidence);
    }

    private Step done(Done fact, @Nullable Evidence evidence) {
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, WorkState.DONE, asked, plan, fact, null, null),
                new WorkEvent(Kind.DONE, fact.on(), said(fact), evidence));
    }

    private static String said(Done fact) {
        return fact.note().isEmpty() ? "by " + fact.by() : "by " + fact.by() + ": " + fact.note();
    }

    /** @throws IllegalStateException before it is done */
    Step prove(Evidence evidence, String words) {
        if (state != WorkState.DONE) {
            throw new IllegalStateException("Item " + id + " is " + state + ": only what is done can be proven");
        }
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, WorkState.PROVEN, asked, plan, done, evidence, null),
                new WorkEvent(Kind.PROVEN, null, words, evidence));
    }

    /** A later reading asks for it again. */
    Step notCured(Asked again, Evidence evidence, String words) {
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, WorkState.RAISED, again, Plan.NONE, null, null, null),
                new WorkEvent(Kind.NOT_CURED, null, words + " " + again.reason(), evidence));
    }

    /** It is asked for in other words, sooner or later, more or less urgently, or by another survey. */
    Step stillAsked(Asked now) {
        Long survey = now.surveyId();
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, state, now, plan, done, proof, closing),
                new WorkEvent(
                        Kind.STILL_ASKED, now.by(), now.reason(), survey == null ? null : Evidence.survey(survey)));
    }

    /**
     * A person's decision.
     *
     * @param quietUntil the last day on which it is not raised anew; null: until a later survey asks for it
     */
    public Step dismiss(String reason, @Nullable LocalDate quietUntil) {
        if (key.kind() == WorkKind.OVERDUE_DUTY) {
            throw new Conflict(
                    "A duty cannot be dismissed: waive it on the string's page, with the reason, until a day.");
        }
        if (!isOpen()) {
            throw new Conflict("This is " + state.word() + " already: there is nothing to dismiss.");
        }
        return close(new Closing(reason, false, quietUntil), null);
    }

    Step dismissByService(String reason, @Nullable Evidence evidence) {
        return close(new Closing(reason, true, null), evidence);
    }

    private Step close(Closing how, @Nullable Evidence evidence) {
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, WorkState.DISMISSED, asked, plan, done, null, how),
                new WorkEvent(Kind.DISMISSED, how.quietUntil(), how.reason(), evidence));
    }

    /** Takes back the last thing a person did to it: a plan, a report, a dismissal. */
    public Step undo(String note) {
        return switch (state) {
            case RAISED -> throw new Conflict("Nothing was done to this yet. If it is not to be done, dismiss it.");
            case PROVEN ->
                throw new Conflict(
                        "This is proven by " + Objects.requireNonNull(proof).words()
                                + ". If that is wrong, void it: this is then open again.");
            case PLANNED -> undone(WorkState.RAISED, Plan.NONE, null, "The plan is taken back.", note);
            case DONE -> takenBack(note);
            case DISMISSED -> reopen(note);
        };
    }

    private Step takenBack(String note) {
        if (Objects.requireNonNull(done).byRecord()) {
            throw new Conflict("This is done by " + done.by()
                    + ". If that is wrong, correct it there: this is then to be" + " done again.");
        }
        return undone(toDo(), plan, null, "The report is taken back.", note);
    }

    /** What a record said to be done, and now says otherwise. */
    Step notDoneAfterAll(String words) {
        return undone(toDo(), plan, null, words, "");
    }

    private Step reopen(String note) {
        if (Objects.requireNonNull(closing).byService()) {
            throw new Conflict("This was closed by itself: " + closing.reason()
                    + " If it is to be done all the same, raise it anew.");
        }
        return undone(done == null ? toDo() : WorkState.DONE, plan, done, "The dismissal is taken back.", note);
    }

    private WorkState toDo() {
        return plan.on() == null && plan.roundId() == null ? WorkState.RAISED : WorkState.PLANNED;
    }

    private Step undone(WorkState to, Plan kept, @Nullable Done keptDone, String words, String note) {
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, to, asked, kept, keptDone, null, null),
                new WorkEvent(Kind.UNDONE, null, note.isBlank() ? words : words + " " + note, null));
    }

    /** A proven item whose proof does not count any more: done, or to be done where a record had done it. */
    public Step withoutProof(String words) {
        if (state != WorkState.PROVEN || done == null) {
            throw new IllegalStateException("Item " + id + " is " + state + " and has no proof to lose");
        }
        WorkState to = done.byRecord() ? toDo() : WorkState.DONE;
        return new Step(
                new WorkItem(id, stringId, key, raisedOn, to, asked, plan, done.byRecord() ? null : done, null, null),
                new WorkEvent(Kind.PROOF_WITHDRAWN, null, words, proof));
    }

    private void requireToDo(String what) {
        if (state == WorkState.DONE) {
            throw new Conflict(
                    "This is reported done and waits for a reading. Take the report back before it is " + what + ".");
        }
        if (!isOpen()) {
            throw new Conflict("This is " + state.word() + ": it cannot be " + what
                    + ". If it is to be done again, raise it anew.");
        }
    }
}
