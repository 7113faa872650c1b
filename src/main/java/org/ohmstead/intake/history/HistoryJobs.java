package org.ohmstead.intake.history;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.util.UUID;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The job that works through a history; whichever node claims it does it, and another one goes on when that node dies. */
@Configuration(proxyBeanMethods = false)
class HistoryJobs {

    static final TaskDescriptor<Void> LOAD = TaskDescriptor.of("history-load");

    @Bean
    OneTimeTask<Void> historyLoad(HistoryRun run) {
        return Tasks.oneTime(LOAD)
                .execute((instance, context) -> run.perform(
                        UUID.fromString(instance.getId()),
                        () -> context.getSchedulerState().isShuttingDown()));
    }
}
