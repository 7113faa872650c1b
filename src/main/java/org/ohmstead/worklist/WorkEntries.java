package org.ohmstead.worklist;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.ohmstead.worklist.WorkPlaces.Place;
import org.ohmstead.worklist.model.Evidence;
import org.ohmstead.worklist.model.Step;
import org.ohmstead.worklist.model.WorkItem;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.stereotype.Component;

/**
 * What persons enter of work, looked at and made a step: everything they may not enter is refused with what to do instead.
 * Whoever calls holds the strings' locks.
 */
@Component
class WorkEntries {

    private static final int MOST_WORDS = 2000;
    private static final int MOST_OF_A_NAME = 120;
    private static final int LONGEST_QUIET_YEARS = 2;

    private final WorkTable table;
    private final WorkPlaces places;
    private final WorkRaising raising;
    private final RemakesOfWork remakes;
    private final FleetRegister register;
    private final Rounds rounds;

    WorkEntries(
            WorkTable table,
            WorkPlaces places,
            WorkRaising raising,
            RemakesOfWork remakes,
            FleetRegister register,
            Rounds rounds) {
        this.table = table;
        this.places = places;
        this.raising = raising;
        this.remakes = remakes;
        this.register = register;
        this.rounds = rounds;
    }

    Step raise(NewWork wanted) {
        return raising.raise(wanted, place(wanted.stringId()), words(wanted.reason(), "the reason"));
    }

    Function<WorkItem, Step> plan(WorkPlan wanted) {
        RoundView round = round(wanted.roundId());
        LocalDate on = wanted.on() == null && round != null ? round.plannedOn() : wanted.on();
        String assignee = brief(wanted.assignee());
        String note = optional(wanted.note());
        return item -> {
            requireAhead(on, place(item.stringId()), "Work is planned");
            requireThere(round, item);
            return item.plan(new WorkItem.Plan(assignee, on, wanted.roundId()), note);
        };
    }

    Function<WorkItem, Step> assign(String assignee) {
        String who = brief(assignee);
        return item -> item.assign(who);
    }

    Step done(WorkItem item, WorkReport report) {
        Place place = place(item.stringId());
        if (report.on().isAfter(place.today())) {
            throw new Refused("Work is reported once it is done: today is " + place.today() + " at the site.");
        }
        boolean link = item.key().kind() == WorkKind.REMAKE_LINK;
        if (!link && (report.asFoundMicroohms() != null || report.asLeftMicroohms() != null)) {
            throw new Refused("As-found and as-left readings belong to the remaking of a link.");
        }
        WorkItem.Done done =
                new WorkItem.Done(report.on(), words(brief(report.by()), "who did it"), remakes.words(report), false);
        Step step = item.reportDone(done, null);
        if (!link) {
            return step;
        }
        Evidence remake = remakes.record(item, report);
        return item.reportDone(done, remake);
    }

    Function<WorkItem, Step> dismiss(String reason, @Nullable LocalDate quietUntil) {
        String words = words(reason, "the reason");
        return item -> {
            Place place = place(item.stringId());
            requireAhead(quietUntil, place, "A dismissal holds");
            if (quietUntil != null && quietUntil.isAfter(place.today().plusYears(LONGEST_QUIET_YEARS))) {
                throw new Refused("A dismissal holds two years at most, until "
                        + place.today().plusYears(LONGEST_QUIET_YEARS) + ".");
            }
            return item.dismiss(words, quietUntil);
        };
    }

    Step undo(WorkItem item, String note) {
        Step step = item.undo(optional(note));
        if (!item.isOpen() && table.isOpenElsewhere(item)) {
            throw new Conflict("The same work is on the list again already: go on with that item.");
        }
        if (item.state() == WorkState.DONE) {
            remakes.takeBack(item);
        }
        return step;
    }

    private Place place(long stringId) {
        return Objects.requireNonNull(places.of(List.of(stringId)).get(stringId));
    }

    private @Nullable RoundView round(@Nullable Long id) {
        if (id == null) {
            return null;
        }
        RoundView round = rounds.round(id);
        if (round.cancelledBecause() != null) {
            throw new Conflict("Round " + id + " is cancelled: choose another one, or a day.");
        }
        return round;
    }

    private void requireThere(@Nullable RoundView round, WorkItem item) {
        if (round != null && !register.string(item.stringId()).siteCode().equals(round.siteCode())) {
            throw new Refused("The round goes to " + round.siteCode() + ", the work is at "
                    + register.string(item.stringId()).title() + ".");
        }
    }

    private static void requireAhead(@Nullable LocalDate day, Place place, String what) {
        if (day != null && day.isBefore(place.today())) {
            throw new Refused(what + " for today or a later day: today is " + place.today() + " at the site.");
        }
    }

    private static String words(String text, String what) {
        if (text.isBlank()) {
            throw new Refused("Give " + what + ": others will read it.");
        }
        return optional(text);
    }

    private static String optional(String text) {
        if (text.length() > MOST_WORDS) {
            throw new Refused("That is too long: say it in " + MOST_WORDS + " characters.");
        }
        return text.strip();
    }

    private static String brief(String name) {
        if (name.length() > MOST_OF_A_NAME) {
            throw new Refused("A name has at most " + MOST_OF_A_NAME + " characters.");
        }
        return name.strip();
    }
}
