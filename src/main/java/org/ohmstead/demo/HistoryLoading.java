package org.ohmstead.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.fleet.StringView;
import org.ohmstead.ledger.BulkLedger;
import org.ohmstead.ledger.NewSurvey;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Loads register, accounts and history in one transaction: a start that is cut short leaves nothing behind. */
@Component
@Profile("demo")
class HistoryLoading {

    private final RegisterLoading register;
    private final DemoPeople people;
    private final BulkLedger ledger;
    private final ProgrammeLoading programme;

    HistoryLoading(RegisterLoading register, DemoPeople people, BulkLedger ledger, ProgrammeLoading programme) {
        this.register = register;
        this.people = people;
        this.ledger = ledger;
        this.programme = programme;
    }

    /** @return false when it was loaded before */
    @Transactional
    boolean load(DemoEstate estate) {
        if (register.isDone()) {
            return false;
        }
        register.enterPlaces();
        people.open(register.areaId(Places.AREAS.get(0).code()));
        List<NewSurvey> history = new ArrayList<>();
        Map<DemoString, Long> ids = new LinkedHashMap<>();
        for (DemoString string : estate.strings()) {
            StringView entered = register.enter(string, estate.today());
            ids.put(string, entered.id());
            history.addAll(new Simulation(string, estate.today()).history(entered.id()));
        }
        ledger.copyIn(history.stream());
        programme.load(estate, ids);
        return true;
    }
}
