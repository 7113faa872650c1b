package org.ohmstead.worklist;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.CronSchedule;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The job of the work list; whichever node claims it does it. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(WorkSettings.class)
class WorkJobs {

    @Bean
    RecurringTask<Void> nightlyWorkList(WorkKeeping keeping, WorkSettings settings) {
        return Tasks.recurring("work-list-nightly", new CronSchedule(settings.at(), settings.zone()))
                .execute((instance, context) -> keeping.reckonEstate());
    }
}
