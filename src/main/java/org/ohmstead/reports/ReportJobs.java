package org.ohmstead.reports;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.CronSchedule;
import java.util.UUID;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The jobs of reports; whichever node claims one does it. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(ReportSettings.class)
class ReportJobs {

    static final TaskDescriptor<Void> EXPORT = TaskDescriptor.of("report-export");

    @Bean
    OneTimeTask<Void> reportExport(ExportWork work) {
        return Tasks.oneTime(EXPORT).execute((instance, context) -> work.perform(UUID.fromString(instance.getId())));
    }

    @Bean
    RecurringTask<Void> reportsByMail(ReportPost post, ExportWork work, ReportSettings settings) {
        return Tasks.recurring("reports-by-mail", new CronSchedule(settings.at(), settings.zone()))
                .execute((instance, context) -> {
                    work.tidy();
                    post.sendAll();
                });
    }
}
