package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.access.Reach;
import org.ohmstead.programme.rules.NextDate;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored next dates. */
@Component
class NextDateTable {

    private static final String PUT = """
            insert into next_date (string_id, due_on, governs, reason, interval_due_on, surveyed_on, recheck_by, risk_on,
                                   duty_due_on, demanded_by, moved_at)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            on conflict (string_id) do update
            set due_on = excluded.due_on, governs = excluded.governs, reason = excluded.reason,
                interval_due_on = excluded.interval_due_on, surveyed_on = excluded.surveyed_on,
                recheck_by = excluded.recheck_by, risk_on = excluded.risk_on, duty_due_on = excluded.duty_due_on,
                demanded_by = excluded.demanded_by,
                sequence = next_date.sequence + (next_date.due_on <> excluded.due_on)::integer,
                moved_at = case when next_date.due_on <> excluded.due_on then excluded.moved_at
                           else next_date.moved_at end
            where (next_date.due_on, next_date.governs, next_date.reason, next_date.surveyed_on, next_date.recheck_by,
                   next_date.risk_on, next_date.duty_due_on, next_date.demanded_by, next_date.interval_due_on)
               is distinct from (excluded.due_on, excluded.governs, excluded.reason, excluded.surveyed_on,
                   excluded.recheck_by, excluded.risk_on, excluded.duty_due_on, excluded.demanded_by, excluded.interval_due_on)""";

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;
    private final Clock clock;

    NextDateTable(JdbcClient jdbc, JdbcTemplate batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    /** In the order of the strings, so that two writers never wait for each other in a circle. */
    void put(Map<InService, NextDate> dates) {
        batches.batchUpdate(
                PUT,
                dates.entrySet().stream()
                        .sorted(Map.Entry.comparingByKey(java.util.Comparator.comparingLong(InService::stringId)))
                        .map(date -> row(date.getKey(), date.getValue()))
                        .toList());
    }

    private Object[] row(InService string, NextDate next) {
        return new Object[] {
            string.stringId(),
            next.dueOn(),
            next.governs().name(),
            next.reason(),
            next.intervalDueOn(),
            string.surveyedOn(),
            next.recheckBy(),
            next.riskOn(),
            next.dutyDueOn(),
            next.demandedBy(),
            Timestamp.from(clock.instant())
        };
    }

    void remove(Collection<Long> stringIds) {
        if (!stringIds.isEmpty()) {
            jdbc.sql("delete from next_date where string_id = any (?)")
                    .param(stringIds.toArray(Long[]::new))
                    .update();
        }
    }

    Optional<NextDateView> find(long stringId) {
        return jdbc.sql("select * from next_date where string_id = ?")
                .param(stringId)
                .query((row, n) -> view(row))
                .optional();
    }

    List<NextDateView> inReach(Reach reach) {
        return jdbc.sql("""
                        select d.* from next_date d
                        join battery_string b on b.id = d.string_id join site s on s.id = b.site_id
                        where :everywhere or s.area_id = any (:areaIds)
                        order by d.due_on, d.string_id""")
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) -> view(row))
                .list();
    }

    private static NextDateView view(ResultSet row) throws SQLException {
        return new NextDateView(
                row.getLong("string_id"),
                row.getObject("due_on", LocalDate.class),
                NextDate.Governs.valueOf(row.getString("governs")),
                row.getString("reason"),
                row.getObject("interval_due_on", LocalDate.class),
                row.getObject("recheck_by", LocalDate.class),
                row.getObject("duty_due_on", LocalDate.class),
                row.getObject("risk_on", LocalDate.class),
                row.getObject("demanded_by", LocalDate.class));
    }
}
