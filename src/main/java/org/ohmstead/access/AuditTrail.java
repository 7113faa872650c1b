package org.ohmstead.access;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** Who did what to which thing, and when: written in the transaction of the act itself, never changed afterwards. */
@Component
public class AuditTrail {

    private final JdbcClient jdbc;
    private final Clock clock;
    private final JsonMapper json;

    AuditTrail(JdbcClient jdbc, Clock clock, JsonMapper json) {
        this.jdbc = jdbc;
        this.clock = clock;
        this.json = json;
    }

    /** @param detail small and free of secrets; kept as JSON */
    public record Entry(
            long id, Instant at, String actor, String action, String subjectKind, String subjectId, String detail) {}

    /** @param areaId where it happened, null for what belongs to no area */
    @Transactional(propagation = Propagation.MANDATORY)
    public void record(
            String action, String subjectKind, String subjectId, @Nullable Long areaId, Map<String, ?> detail) {
        jdbc.sql("""
                        insert into audit_entry (at, actor, action, subject_kind, subject_id, area_id, detail)
                        values (?, ?, ?, ?, ?, ?, ?::jsonb)
                        """)
                .params(java.util.Arrays.asList(
                        Timestamp.from(clock.instant()),
                        actor(),
                        action,
                        subjectKind,
                        subjectId,
                        areaId,
                        json.writeValueAsString(detail)))
                .update();
    }

    /** The latest entries before that entry id, newest first; start with {@link Long#MAX_VALUE}. */
    @Transactional(readOnly = true)
    public List<Entry> before(long id, int limit) {
        return jdbc.sql("""
                        select id, at, actor, action, subject_kind, subject_id, detail::text as detail
                        from audit_entry where id < ? order by id desc limit ?
                        """)
                .params(id, limit)
                .query((row, n) -> new Entry(
                        row.getLong("id"),
                        row.getTimestamp("at").toInstant(),
                        row.getString("actor"),
                        row.getString("action"),
                        row.getString("subject_kind"),
                        row.getString("subject_id"),
                        row.getString("detail")))
                .list();
    }

    private static String actor() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication == null ? "nobody signed in" : authentication.getName();
    }
}
