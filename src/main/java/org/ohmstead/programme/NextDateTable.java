package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ohmstead.access.Reach;
import org.ohmstead.programme.rules.NextDate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored next dates. */
@Component
class NextDateTable {

    private final JdbcClient jdbc;

    NextDateTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void put(long stringId, NextDate next) {
        jdbc.sql("""
                        insert into next_date (string_id, due_on, governs, reason, interval_due_on, recheck_by)
                        values (:string, :dueOn, :governs, :reason, :interval, :recheck)
                        on conflict (string_id) do update
                        set due_on = excluded.due_on, governs = excluded.governs, reason = excluded.reason,
                            interval_due_on = excluded.interval_due_on, recheck_by = excluded.recheck_by""")
                .param("string", stringId)
                .param("dueOn", next.dueOn())
                .param("governs", next.governs().name())
                .param("reason", next.reason())
                .param("interval", next.intervalDueOn())
                .param("recheck", next.recheckBy(), java.sql.Types.DATE)
                .update();
    }

    void remove(long stringId) {
        jdbc.sql("delete from next_date where string_id = ?").param(stringId).update();
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
                row.getObject("recheck_by", LocalDate.class));
    }
}
