package org.ohmstead.programme;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.CronSchedule;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The jobs of the programme; whichever node claims one does it. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties({ProgrammeSettings.class, DigestSettings.class})
class ProgrammeJobs {

    @Bean
    RecurringTask<Void> nightlyNextDates(NextDateKeeping keeping, ProgrammeSettings settings) {
        return Tasks.recurring("next-dates-nightly", new CronSchedule(settings.at(), settings.zone()))
                .execute((instance, context) -> keeping.recomputeEstate());
    }

    @Bean
    RecurringTask<Void> digests(DigestPost post, DigestSettings settings) {
        return Tasks.recurring("digests", new CronSchedule(settings.at(), settings.zone()))
                .execute((instance, context) -> post.sendAll());
    }
}
