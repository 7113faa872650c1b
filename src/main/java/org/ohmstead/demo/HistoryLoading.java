package org.ohmstead.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
    private final CapacityLoading capacity;

    HistoryLoading(
            RegisterLoading register,
            DemoPeople people,
            BulkLedger ledger,
            ProgrammeLoading programme,
            CapacityLoading capacity) {
        this.register = register;
        this.people = people;
        this.ledger = ledger;
        this.programme = programme;
        this.capacity = capacity;
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
        List<DemoString> filed = FiledSurveys.of(estate);
        Map<DemoString, Long> ids = new LinkedHashMap<>();
        for (DemoString string : estate.strings()) {
            StringView entered = register.enter(string, estate.today());
            ids.put(string, entered.id());
            List<NewSurvey> surveys = new Simulation(string, estate.today()).history(entered.id());
            history.addAll(filed.contains(string) ? surveys.subList(0, surveys.size() - 1) : surveys);
        }
        ledger.copyIn(history.stream());
        // before there are duties, so that none is worked out anew test by test
        CapacityStory.all().forEach(story -> {
            DemoString string = estate.string(story.site(), story.string());
            capacity.load(string, Objects.requireNonNull(ids.get(string)), story, estate.today());
        });
        programme.load(estate, ids);
        return true;
    }
}
