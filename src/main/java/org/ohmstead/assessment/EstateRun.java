package org.ohmstead.assessment;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import java.time.Clock;
import java.util.Optional;
import org.ohmstead.access.Access;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/**
 * Walks the whole estate in one ordered stream and judges every string with news. Safe on two nodes: a walk in the
 * background is claimed by one of them, and a string that got a newer judgement meanwhile keeps it.
 */
@Component
class EstateRun {

    private final EstateWalk walk;
    private final Judging judging;
    private final Instruments instruments;
    private final Runs runs;
    private final Access access;
    private final Clock clock;
    private final ObjectProvider<SchedulerClient> scheduler;

    EstateRun(
            EstateWalk walk,
            Judging judging,
            Instruments instruments,
            Runs runs,
            Access access,
            Clock clock,
            ObjectProvider<SchedulerClient> scheduler) {
        this.walk = walk;
        this.judging = judging;
        this.instruments = instruments;
        this.runs = runs;
        this.access = access;
        this.clock = clock;
        this.scheduler = scheduler;
    }

    RunView walk(String by) {
        return perform(runs.request(by));
    }

    RunView request(String by) {
        RunView run = runs.request(by);
        scheduler.ifAvailable(client -> client.scheduleIfNotExists(
                AssessmentJobs.REQUESTED.instance(String.valueOf(run.id())).build(), clock.instant()));
        return run;
    }

    /** What a claimed request does; nothing when the walk was finished meanwhile. */
    void performRequested() {
        runs.underWay().ifPresent(this::perform);
    }

    Optional<RunView> last() {
        return runs.last();
    }

    private RunView perform(RunView run) {
        access.asSystem(Assessments.ACTOR, () -> {
            judging.refresh();
            walk.through(run.id());
            instruments.look();
        });
        return runs.finish(run.id());
    }
}
