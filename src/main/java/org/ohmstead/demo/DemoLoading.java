package org.ohmstead.demo;

import java.time.Clock;
import java.time.LocalDate;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.Assessments;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Loads the demo estate at the first start in the demo profile. */
@Component
@Profile("demo")
class DemoLoading implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(DemoLoading.class);

    private final HistoryLoading history;
    private final UploadLoading uploads;
    private final RoundLoading rounds;
    private final WorkLoading work;
    private final Assessments assessments;
    private final Access access;
    private final Clock clock;

    DemoLoading(
            HistoryLoading history,
            UploadLoading uploads,
            RoundLoading rounds,
            WorkLoading work,
            Assessments assessments,
            Access access,
            Clock clock) {
        this.history = history;
        this.uploads = uploads;
        this.rounds = rounds;
        this.work = work;
        this.assessments = assessments;
        this.access = access;
        this.clock = clock;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        access.asSystem("demo estate", this::load);
    }

    private void load() {
        DemoEstate estate = DemoEstate.on(LocalDate.now(clock.withZone(Places.ZONE)));
        if (history.load(estate)) {
            LOG.info(
                    "Demo estate: {} strings with eight years of surveys are there; judging them",
                    estate.strings().size());
            assessments.reassessEstate();
            rounds.plan(estate.today());
            work.begin(estate);
        }
        uploads.handIn(estate);
    }
}
