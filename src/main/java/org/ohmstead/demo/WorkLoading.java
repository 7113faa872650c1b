package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ohmstead.access.Access;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonView;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.worklist.NewWork;
import org.ohmstead.worklist.WorkItemView;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.WorkPlan;
import org.ohmstead.worklist.WorkReport;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * Sets the work list in motion once the estate is judged: some of what is asked is planned, some done, one link is read again
 * after the work, and one finding is dismissed. What the estate does not ask for on its day is left alone.
 */
@Component
@Profile("demo")
class WorkLoading {

    private final WorkList work;
    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final People people;
    private final Access access;

    WorkLoading(WorkList work, FleetRegister register, SurveyLedger ledger, People people, Access access) {
        this.work = work;
        this.register = register;
        this.ledger = ledger;
        this.people = people;
        this.access = access;
    }

    void begin(DemoEstate estate) {
        access.as(engineer(), () -> {
            curedLink(estate);
            looseLinks(estate.today());
            jars(estate.today());
            asked(estate.today());
            return true;
        });
    }

    private Person engineer() {
        PersonView known = people.find("engineer").orElseThrow();
        return new Person(known.id(), known.username(), known.displayName(), Role.ENGINEER, Reach.EVERYWHERE);
    }

    /** Made anew some days ago, and read since: the reading proves it. */
    private void curedLink(DemoEstate estate) {
        DemoString hot = estate.string(8, "B");
        StringView string = string(8, "B");
        LocalDate today = estate.today();
        item(string, WorkKind.REMAKE_LINK, Subject.link(31)).ifPresent(item -> {
            work.plan(item.id(), new WorkPlan(today, null, crew(string), "With the relay test on the same day"));
            LocalDate on = later(item.askedOn(), today.minusDays(4));
            work.done(
                    item.id(),
                    new WorkReport(on, crew(string), "Bolts loose; cleaned, greased, torqued to 12 Nm", 42.3, 23.6));
            DemoString cured = hot.with(hot.story().withLinks(Trouble.remade(31, 0, 1)));
            ledger.accept(new Simulation(cured, today).survey(string.id(), today.minusDays(2), today, 0));
        });
    }

    /** One is planned, the other one done; nobody has read it since. */
    private void looseLinks(LocalDate today) {
        StringView string = string(20, "A");
        item(string, WorkKind.REMAKE_LINK, Subject.link(8))
                .ifPresent(item -> work.plan(
                        item.id(),
                        new WorkPlan(today.plusDays(6), null, crew(string), "Charger off from nine to noon")));
        item(string, WorkKind.REMAKE_LINK, Subject.link(45)).ifPresent(item -> {
            LocalDate on = later(item.askedOn(), today.minusDays(1));
            work.done(item.id(), new WorkReport(on, crew(string), "Lug cracked; strap replaced", 45.6, 23.9));
        });
    }

    private void jars(LocalDate today) {
        item(string(5, "B"), WorkKind.REPLACE_JAR, Subject.jar(12))
                .ifPresent(item -> work.plan(
                        item.id(), new WorkPlan(today.plusDays(20), null, "", "Spare jar ordered, two weeks by road")));
        item(string(16, "A"), WorkKind.REPLACE_JAR, Subject.jar(9))
                .ifPresent(item -> work.dismiss(
                        item.id(),
                        "Tested alone last week at 97 % of its rating; read it again in spring",
                        today.plusDays(90)));
        List<Long> pair = List.of(71, 72).stream()
                .flatMap(position -> item(string(23, "A"), WorkKind.REPLACE_JAR, Subject.jar(position)).stream())
                .map(WorkItemView::id)
                .toList();
        if (!pair.isEmpty()) {
            work.assign(pair, "Battery engineer");
        }
    }

    /** What people asked for themselves; the reading brings the string's next date forward. */
    private void asked(LocalDate today) {
        work.raise(new NewWork(
                string(9, "A").id(),
                WorkKind.MEASURE_AGAIN,
                Subject.Kind.JAR,
                6,
                Urgency.RECHECK,
                today.plusDays(35),
                "The crew doubts the seat of the probe at the new jar."));
        work.raise(new NewWork(
                string(13, "B").id(),
                WorkKind.INVESTIGATE,
                Subject.Kind.STRING,
                null,
                Urgency.PLAN,
                null,
                "Water marks below the upper tier: is the roof tight?"));
    }

    private String crew(StringView string) {
        return "Crew " + register.site(string.siteCode()).areaName();
    }

    private StringView string(int site, String name) {
        return register.findString(Places.code(site), name).orElseThrow();
    }

    private Optional<WorkItemView> item(StringView string, WorkKind kind, Subject subject) {
        return work.openOf(string.id()).stream()
                .filter(item -> item.kind() == kind
                        && item.subject() == subject.kind()
                        && java.util.Objects.equals(item.unit(), subject.unit()))
                .findFirst();
    }

    private static LocalDate later(@org.jspecify.annotations.Nullable LocalDate asked, LocalDate day) {
        return asked == null || day.isAfter(asked) ? day : asked;
    }
}
