package org.ohmstead.demo;

import java.time.LocalDate;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.kernel.LinkKind;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Enters the demo estate into the register. */
@Component
@Profile("demo")
class RegisterLoading {

    private final FleetRegister register;
    private final JarsAndLinks jarsAndLinks;

    RegisterLoading(FleetRegister register, JarsAndLinks jarsAndLinks) {
        this.register = register;
        this.jarsAndLinks = jarsAndLinks;
    }

    boolean isDone() {
        String first = Places.AREAS.get(0).code();
        return register.areas().stream().anyMatch(area -> area.code().equals(first));
    }

    long areaId(String code) {
        return register.area(code).id();
    }

    void enterPlaces() {
        Places.AREAS.forEach(register::createArea);
        Places.sites().forEach(register::createSite);
        JarTypes.ALL.forEach(register::createJarType);
    }

    StringView enter(DemoString string, LocalDate today) {
        StringView entered = register.createString(string.entry());
        Cables.between(string.design().tiers()).forEach(ordinal -> jarsAndLinks.changeLink(cable(string, ordinal)));
        jarsAndLinks.fillEmptyPositions(entered.id(), string.entry().inServiceOn());
        string.story().replaced().forEach(work -> jarsAndLinks.replaceJar(newJar(string, work, today)));
        string.story().remade().forEach(work -> jarsAndLinks.recordRemake(remake(string, work, today)));
        return entered;
    }

    private static LinkEntry cable(DemoString string, int ordinal) {
        return new LinkEntry(
                string.entry().site(), string.entry().name(), ordinal, LinkKind.TIER_CABLE, 1, Cables.CONDUCTOR);
    }

    private static OccupancyEntry newJar(DemoString string, Story.Work work, LocalDate today) {
        LocalDate on = today.minusMonths(work.monthsAgo());
        String serial = string.design().jarType().code() + "-" + on.getYear() + "-" + (1000 + work.place());
        return new OccupancyEntry(
                string.entry().site(),
                string.entry().name(),
                work.place(),
                string.design().jarType().code(),
                serial,
                on,
                null,
                work.words(),
                "",
                null,
                null);
    }

    private static RemakeEntry remake(DemoString string, Story.Work work, LocalDate today) {
        return new RemakeEntry(
                string.entry().site(),
                string.entry().name(),
                work.place(),
                today.minusMonths(work.monthsAgo()),
                null,
                null,
                work.words());
    }
}
