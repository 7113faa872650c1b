package org.ohmstead.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.repair.Step;
import org.ohmstead.intake.repair.StepKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** The repairs of uploads, in the order they were made; undoing one is written down as well. */
@Repository
class RepairBook {

    private static final String TAKEN_BACK = "TAKEN_BACK";

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Clock clock;

    RepairBook(JdbcClient jdbc, JsonMapper json, Clock clock) {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
    }

    List<RepairView> all(UUID uploadId) {
        return jdbc.sql("""
                        select r.*, exists (select from upload_repair u
                          where u.upload_id = r.upload_id and u.takes_back = r.ordinal) as taken_back
                        from upload_repair r where r.upload_id = ? and r.takes_back is null order by r.ordinal
                        """).param(uploadId).query(this::view).list();
    }

    List<Step> inForce(UUID uploadId) {
        return all(uploadId).stream()
                .filter(repair -> !repair.takenBack())
                .map(RepairView::step)
                .toList();
    }

    void add(UUID uploadId, Step step, String reason, String by) {
        insert(uploadId, StepKind.of(step).name(), json.writeValueAsString(step), step.words(), reason, null, by);
    }

    void takeBack(UUID uploadId, RepairView repair, String by) {
        insert(uploadId, TAKEN_BACK, "{}", "Taken back: " + repair.words(), "", repair.ordinal(), by);
    }

    private void insert(
            UUID uploadId,
            String kind,
            String arguments,
            String words,
            String reason,
            @Nullable Integer takesBack,
            String by) {
        jdbc.sql("""
                        insert into upload_repair (upload_id, ordinal, kind, arguments, words, reason, takes_back, at, by)
                        select :upload, coalesce(max(ordinal), 0) + 1, :kind, :arguments::jsonb, :words, :reason,
                          :takesBack, :at, :by
                        from upload_repair where upload_id = :upload
                        """)
                .param("upload", uploadId)
                .param("kind", kind)
                .param("arguments", arguments)
                .param("words", words)
                .param("reason", reason)
                .param("takesBack", takesBack, java.sql.Types.INTEGER)
                .param("at", Timestamp.from(clock.instant()))
                .param("by", by)
                .update();
    }

    private RepairView view(ResultSet row, int n) throws SQLException {
        StepKind kind = StepKind.valueOf(row.getString("kind"));
        return new RepairView(
                row.getInt("ordinal"),
                kind,
                json.readValue(row.getString("arguments"), kind.type()),
                row.getString("words"),
                row.getString("reason"),
                row.getTimestamp("at").toInstant(),
                row.getString("by"),
                row.getBoolean("taken_back"));
    }
}
