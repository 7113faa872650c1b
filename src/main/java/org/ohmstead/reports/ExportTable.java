package org.ohmstead.reports;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.ohmstead.kernel.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** The stored exports. Every change is committed at once, so that others see it. */
@Component
class ExportTable {

    private static final String SELECT = """
            select id, report, form, state, done_steps, all_steps, step, asked_at, ended_at, file_name, sha256, problem
            from report_export where\s""";

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Clock clock;

    ExportTable(JdbcClient jdbc, JsonMapper json, Clock clock) {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
    }

    /** What is to be made, and for whom. */
    record Order(ReportWish wish, ReportForm form, String askedBy) {}

    void add(UUID id, Order order) {
        jdbc.sql("""
                        insert into report_export (id, asked_by, report, parameters, form, state, asked_at)
                        values (?, ?, ?, ?::jsonb, ?, 'ASKED', ?)""")
                .params(
                        id,
                        order.askedBy(),
                        order.wish().kind().code(),
                        json.writeValueAsString(order.wish()),
                        order.form().suffix(),
                        Timestamp.from(clock.instant()))
                .update();
    }

    /** Takes it up, also again after a node died over it; nothing when it has ended. */
    Optional<Order> start(UUID id) {
        return jdbc.sql("""
                        update report_export set state = 'RUNNING', done_steps = 0, all_steps = 1, step = ''
                        where id = ? and state in ('ASKED', 'RUNNING') returning parameters::text, form, asked_by""")
                .param(id)
                .query((row, n) -> new Order(
                        json.readValue(row.getString("parameters"), ReportWish.class),
                        ReportForm.of(row.getString("form")),
                        row.getString("asked_by")))
                .optional();
    }

    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void progress(UUID id, String step, int done, int all) {
        jdbc.sql("update report_export set step = ?, done_steps = ?, all_steps = ? where id = ?")
                .params(step, done, all, id)
                .update();
    }

    void finish(UUID id, String fileName, Path file, byte[] sha256) {
        try (InputStream content = Files.newInputStream(file)) {
            jdbc.sql("""
                            update report_export set state = 'DONE', step = '', done_steps = all_steps, ended_at = ?,
                              file_name = ?, content = ?, sha256 = ? where id = ?""")
                    .params(Timestamp.from(clock.instant()), fileName, content.readAllBytes(), sha256, id)
                    .update();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void fail(UUID id, String problem) {
        jdbc.sql("update report_export set state = 'FAILED', ended_at = ?, problem = ? where id = ?")
                .params(Timestamp.from(clock.instant()), problem, id)
                .update();
    }

    Optional<ExportView> find(UUID id, String askedBy) {
        return jdbc.sql(SELECT + "id = ? and asked_by = ?")
                .params(id, askedBy)
                .query((row, n) -> view(row))
                .optional();
    }

    List<ExportView> recent(String askedBy, int limit) {
        return jdbc.sql(SELECT + "asked_by = ? order by asked_at desc, id limit ?")
                .params(askedBy, limit)
                .query((row, n) -> view(row))
                .list();
    }

    byte[] content(UUID id) {
        return jdbc.sql("select content from report_export where id = ? and state = 'DONE'")
                .param(id)
                .query(byte[].class)
                .optional()
                .orElseThrow(() -> NotFound.of("finished export", id));
    }

    int deleteBefore(Instant moment) {
        return jdbc.sql("delete from report_export where asked_at < ?")
                .param(Timestamp.from(moment))
                .update();
    }

    private static ExportView view(ResultSet row) throws SQLException {
        Timestamp ended = row.getTimestamp("ended_at");
        byte[] sha256 = row.getBytes("sha256");
        return new ExportView(
                row.getObject("id", UUID.class),
                ReportKind.of(row.getString("report")).title(),
                row.getString("form"),
                ExportView.State.valueOf(row.getString("state")),
                row.getInt("done_steps"),
                row.getInt("all_steps"),
                row.getString("step"),
                row.getTimestamp("asked_at").toInstant(),
                ended == null ? null : ended.toInstant(),
                row.getString("file_name"),
                sha256 == null ? null : HexFormat.of().formatHex(sha256),
                row.getString("problem"));
    }
}
