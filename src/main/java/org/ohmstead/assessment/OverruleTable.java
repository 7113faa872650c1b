package org.ohmstead.assessment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Overruled judgements, the ended ones too. */
@Component
class OverruleTable {

    private final JdbcClient jdbc;
    private final Clock clock;

    OverruleTable(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    long add(long stringId, NewOverrule wanted, @Nullable LocalDate unitSince, Urgency insteadOf, String by) {
        return jdbc.sql("""
                        insert into overrule (string_id, kind, unit, unit_since, urgency, instead_of, reason, made_at, made_by,
                                              last_day)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) returning id""")
                .params(Arrays.asList(
                        stringId,
                        wanted.subject().name(),
                        wanted.unit(),
                        unitSince,
                        wanted.urgency().name(),
                        insteadOf.name(),
                        wanted.reason().strip(),
                        Timestamp.from(clock.instant()),
                        by,
                        wanted.lastDay()))
                .query(Long.class)
                .single();
    }

    void end(long id, String by) {
        jdbc.sql("update overrule set ended_at = ?, ended_by = ? where id = ? and ended_at is null")
                .params(Timestamp.from(clock.instant()), by, id)
                .update();
    }

    Optional<OverruleView> find(long id) {
        return jdbc.sql("select * from overrule where id = ?")
                .param(id)
                .query((row, n) -> view(row))
                .optional();
    }

    /** Newest first. */
    List<OverruleView> of(long stringId) {
        return jdbc.sql("select * from overrule where string_id = ? order by id desc")
                .param(stringId)
                .query((row, n) -> view(row))
                .list();
    }

    /** Of all strings, those that nobody ended; some may have run out. */
    List<OverruleView> standing() {
        return jdbc.sql("select * from overrule where ended_at is null order by string_id, id")
                .query((row, n) -> view(row))
                .list();
    }

    /** The same of those strings. */
    List<OverruleView> standing(Collection<Long> stringIds) {
        return jdbc.sql("select * from overrule where ended_at is null and string_id = any (?) order by string_id, id")
                .params(Arrays.asList((Object) stringIds.toArray(Long[]::new)))
                .query((row, n) -> view(row))
                .list();
    }

    private static OverruleView view(ResultSet row) throws SQLException {
        Timestamp ended = row.getTimestamp("ended_at");
        return new OverruleView(
                row.getLong("id"),
                row.getLong("string_id"),
                OverruleView.Subject.valueOf(row.getString("kind")),
                row.getObject("unit", Integer.class),
                row.getObject("unit_since", LocalDate.class),
                Urgency.valueOf(row.getString("urgency")),
                Urgency.valueOf(row.getString("instead_of")),
                row.getString("reason"),
                row.getTimestamp("made_at").toInstant(),
                row.getString("made_by"),
                row.getObject("last_day", LocalDate.class),
                ended == null ? null : ended.toInstant(),
                row.getString("ended_by"));
    }
}
