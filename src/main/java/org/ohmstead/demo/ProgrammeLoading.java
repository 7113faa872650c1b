package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.RulePacks;
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Puts the demo's strings under rule packs, elects branches, enters past visits and waives one site's duties. */
@Component
@Profile("demo")
class ProgrammeLoading {

    static final String TELECOMS = "telecoms-vented";
    static final String PRACTICE = "practice-valve-regulated";

    /** Where the recommended practice is tried. */
    static final int TRIAL_SITE = 2;

    private static final int YEARS = 3;
    private static final int OWN_CHECK_MONTHS = 3;
    private static final int OWN_MEASURE_MONTHS = 15;

    private final ProgrammeKeeping keeping;
    private final RulePacks packs;
    private final VisitBook visits;

    ProgrammeLoading(ProgrammeKeeping keeping, RulePacks packs, VisitBook visits) {
        this.keeping = keeping;
        this.packs = packs;
        this.visits = visits;
    }

    /** @param ids of the strings as entered */
    void load(DemoEstate estate, Map<DemoString, Long> ids) {
        LocalDate since = LocalDate.of(estate.today().getYear() - YEARS, 1, 1);
        packs.save(telecomsPack(since));
        List<NewVisit> history = new ArrayList<>();
        ids.forEach((string, id) -> {
            LocalDate from = later(since, string.entry().inServiceOn());
            keeping.assign(id, pack(string), from);
            decide(string, id, from, estate.today());
            history.addAll(visits(string, id, since, estate.today()));
        });
        visits.recordHistory(history);
    }

    /** Those that don't take the usual pack of their technology. */
    private static @Nullable String pack(DemoString string) {
        return string.design().load().startsWith("Telecoms") ? TELECOMS : null;
    }

    /** The owner's copy for telecoms sites: the standard's maxima stay, with shorter intervals beside them. */
    private RulePack telecomsPack(LocalDate since) {
        RulePack copied = packs.latest("protection-vented").pack();
        return copied.as(TELECOMS, "Telecoms sites, vented, our shorter intervals", since)
                .withOwnMonths("dc-supply-voltage", OWN_CHECK_MONTHS)
                .withOwnMonths("grounds", OWN_CHECK_MONTHS)
                .withOwnMonths("terminal-resistance", OWN_MEASURE_MONTHS)
                .withOwnMonths("intercell-resistance", OWN_MEASURE_MONTHS);
    }

    private void decide(DemoString string, long id, LocalDate from, LocalDate today) {
        String load = string.design().load();
        if (load.startsWith("Protection, 125")) {
            keeping.elect(id, "cell-condition", "ohmic", from);
        }
        if (load.startsWith("Control centre")) {
            LocalDate monitored = later(from, today.minusMonths(14));
            keeping.elect(id, "dc-supply-voltage", "monitored", monitored);
            keeping.elect(id, "charger-float-voltage", "monitored", monitored);
        }
        if (string.site() == TRIAL_SITE) {
            keeping.assign(id, PRACTICE, today.withDayOfMonth(1));
        }
        if (string.site() == VisitDays.WAIVED_SITE) {
            waive(id, today);
        }
    }

    private void waive(long id, LocalDate today) {
        List.of("dc-supply-voltage", "electrolyte-level", "grounds")
                .forEach(requirement -> keeping.waive(
                        id,
                        requirement,
                        today.minusDays(20),
                        today.plusDays(25),
                        "The track to the site is closed for bridge repairs; the station is off line meanwhile"));
    }

    private static List<NewVisit> visits(DemoString string, long id, LocalDate since, LocalDate today) {
        List<LocalDate> days = VisitDays.of(string.site(), since, today);
        List<NewVisit> visits = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            if (!days.get(i).isBefore(string.entry().inServiceOn())) {
                visits.add(Checklists.visit(string, id, days.get(i), i));
            }
        }
        return visits;
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }
}
