package org.ohmstead.programme;

import java.sql.Timestamp;
import java.sql.Types;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Writes what people decide for strings; deciding again for the same day replaces the decision. */
@Component
class SettingsWriter {

    private final JdbcClient jdbc;
    private final Access access;
    private final Clock clock;

    SettingsWriter(JdbcClient jdbc, Access access, Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.clock = clock;
    }

    void assign(long stringId, LocalDate from, String pack) {
        signed("""
                insert into string_programme (string_id, from_on, pack, set_at, set_by)
                values (:string, :from, :pack, :at, :by)
                on conflict (string_id, from_on) do update
                set pack = excluded.pack, set_at = excluded.set_at, set_by = excluded.set_by""")
                .param("string", stringId)
                .param("from", from)
                .param("pack", pack)
                .update();
    }

    void elect(long stringId, String requirement, LocalDate from, String branch) {
        signed("""
                insert into programme_election (string_id, requirement, from_on, branch, set_at, set_by)
                values (:string, :requirement, :from, :branch, :at, :by)
                on conflict (string_id, requirement, from_on) do update
                set branch = excluded.branch, set_at = excluded.set_at, set_by = excluded.set_by""")
                .param("string", stringId)
                .param("requirement", requirement)
                .param("from", from)
                .param("branch", branch)
                .update();
    }

    void shorten(long stringId, String requirement, LocalDate from, @Nullable Integer months) {
        signed("""
                insert into programme_own_interval (string_id, requirement, from_on, months, set_at, set_by)
                values (:string, :requirement, :from, :months, :at, :by)
                on conflict (string_id, requirement, from_on) do update
                set months = excluded.months, set_at = excluded.set_at, set_by = excluded.set_by""")
                .param("string", stringId)
                .param("requirement", requirement)
                .param("from", from)
                .param("months", months, Types.INTEGER)
                .update();
    }

    void waive(long stringId, String requirement, LocalDate grantedOn, LocalDate until, String reason) {
        signed("""
                insert into duty_waiver (string_id, requirement, granted_on, until_on, reason, set_at, set_by)
                values (:string, :requirement, :granted, :until, :reason, :at, :by)""")
                .param("string", stringId)
                .param("requirement", requirement)
                .param("granted", grantedOn)
                .param("until", until)
                .param("reason", reason)
                .update();
    }

    /** @return false when there is no such waiver of that string that has not ended yet */
    boolean endWaiver(long stringId, long waiverId, LocalDate endedOn) {
        return signed("""
                update duty_waiver set ended_on = greatest(:ended::date, granted_on), ended_at = :at, ended_by = :by
                where id = :id and string_id = :string and ended_on is null and until_on >= :ended::date""")
                        .param("ended", endedOn)
                        .param("id", waiverId)
                        .param("string", stringId)
                        .update()
                == 1;
    }

    private JdbcClient.StatementSpec signed(String sql) {
        return jdbc.sql(sql)
                .param("at", Timestamp.from(clock.instant()))
                .param("by", access.current().username());
    }
}
