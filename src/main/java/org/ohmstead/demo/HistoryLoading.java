package org.ohmstead.demo;

import java.util.ArrayList;
import java.util.List;
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

    HistoryLoading(RegisterLoading register, DemoPeople people, BulkLedger ledger) {
        this.register = register;
        this.people = people;
        this.ledger = ledger;
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
        for (DemoString string : estate.strings()) {
            StringView entered = register.enter(string, estate.today());
            history.addAll(new Simulation(string, estate.today()).history(entered.id()));
        }
        ledger.copyIn(history.stream());
        return true;
    }
}
