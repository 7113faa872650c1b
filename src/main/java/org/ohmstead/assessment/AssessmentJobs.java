package org.ohmstead.assessment;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.CronSchedule;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The jobs of assessment; whichever node claims one does it. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(AssessmentSettings.class)
class AssessmentJobs {

    static final TaskDescriptor<Void> REQUESTED = TaskDescriptor.of("reassess-estate-requested");

    @Bean
    RecurringTask<Void> nightlyReassessment(EstateRun run, AssessmentSettings settings) {
        return Tasks.recurring("reassess-estate-nightly", new CronSchedule(settings.at(), settings.zone()))
                .execute((instance, context) -> run.walk("nightly job"));
    }

    @Bean
    OneTimeTask<Void> requestedReassessment(EstateRun run) {
        return Tasks.oneTime(REQUESTED).execute((instance, context) -> run.performRequested());
    }
}
