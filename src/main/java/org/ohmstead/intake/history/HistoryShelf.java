package org.ohmstead.intake.history;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.UploadView;
import org.ohmstead.kernel.Sha256;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Histories and their files, written down. */
@Repository
class HistoryShelf {

    private final JdbcClient jdbc;
    private final Clock clock;

    HistoryShelf(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A file that waits to be worked through. */
    record Waiting(int number, String fileName, byte[] bytes) {}

    /** @return false when these bytes are another load already; its commit was waited for */
    boolean enter(UUID id, byte[] sha256, String fileName, long byteCount, String by) {
        return jdbc.sql("""
                        insert into history_load (id, sha256, file_name, byte_count, received_at, received_by)
                        values (?, ?, ?, ?, ?, ?) on conflict (sha256) do nothing
                        """).params(id, sha256, fileName, byteCount, now(), by).update() == 1;
    }

    void add(UUID loadId, int number, Piece piece) {
        byte[] sha256 = Sha256.of(piece.bytes());
        jdbc.sql("insert into raw_file (sha256, byte_count, content, stored_at) values (?, ?, ?, ?)"
                        + " on conflict (sha256) do nothing")
                .params(sha256, piece.bytes().length, piece.bytes(), now())
                .update();
        jdbc.sql("insert into history_file (load_id, ordinal, file_name, sha256, taken)"
                        + " values (:load, :number, :name, :sha256, :taken)")
                .param("load", loadId)
                .param("number", number)
                .param("name", piece.name())
                .param("sha256", sha256)
                .param("taken", TakenTime.of(piece.bytes()).orElse(null), Types.TIMESTAMP)
                .update();
    }

    Optional<UUID> of(byte[] sha256) {
        return jdbc.sql("select id from history_load where sha256 = ?")
                .param(sha256)
                .query(UUID.class)
                .optional();
    }

    void start(UUID id) {
        jdbc.sql("update history_load set started_at = ? where id = ? and started_at is null")
                .params(now(), id)
                .update();
    }

    /** The next file in order of time, locked until the commit; files that another one works on are passed over. */
    Optional<Waiting> next(UUID loadId) {
        return jdbc.sql("""
                        select f.ordinal, f.file_name, r.content
                        from history_file f join raw_file r on r.sha256 = f.sha256
                        where f.load_id = ? and f.state = 'WAITING'
                        order by f.taken nulls last, f.file_name, f.ordinal limit 1 for update of f skip locked
                        """)
                .param(loadId)
                .query((row, n) -> new Waiting(row.getInt(1), row.getString(2), row.getBytes(3)))
                .optional();
    }

    void conclude(UUID loadId, int number, FileOutcome outcome, @Nullable UUID uploadId, String said) {
        jdbc.sql("update history_file set state = :state, upload_id = :upload, said = :said"
                        + " where load_id = :load and ordinal = :number")
                .param("state", outcome.name())
                .param("upload", uploadId, Types.OTHER)
                .param("said", said)
                .param("load", loadId)
                .param("number", number)
                .update();
    }

    void finish(UUID id) {
        jdbc.sql("update history_load set finished_at = ? where id = ? and finished_at is null")
                .params(now(), id)
                .update();
    }

    /** The strings of which this load has a survey; a file of several surveys has an upload for each. */
    List<Long> strings(UUID loadId) {
        return jdbc.sql("""
                        select distinct u.string_id from history_file f join upload u on u.sha256 = f.sha256
                        where f.load_id = ? and u.survey_id is not null
                        """).param(loadId).query(Long.class).list();
    }

    Optional<HistoryView> find(UUID id) {
        return jdbc.sql("select * from history_load where id = ?")
                .param(id)
                .query((row, n) -> view(row))
                .optional();
    }

    /** Latest first; those of one person, or of everybody. */
    List<HistoryView> recent(@Nullable String by, int limit) {
        return jdbc.sql("select * from history_load where :by::text is null or received_by = :by"
                        + " order by received_at desc, id limit :limit")
                .param("by", by, Types.VARCHAR)
                .param("limit", limit)
                .query((row, n) -> view(row))
                .list();
    }

    private HistoryView view(ResultSet row) throws SQLException {
        UUID id = row.getObject("id", UUID.class);
        Instant started = instant(row, "started_at");
        Instant finished = instant(row, "finished_at");
        Instant until = finished == null ? clock.instant() : finished;
        return new HistoryView(
                id,
                row.getString("file_name"),
                HexFormat.of().formatHex(row.getBytes("sha256")),
                row.getLong("byte_count"),
                row.getTimestamp("received_at").toInstant(),
                row.getString("received_by"),
                finished,
                started == null ? Duration.ZERO : Duration.between(started, until),
                counts(id));
    }

    private Map<FileOutcome, Long> counts(UUID id) {
        return jdbc
                .sql("select state, count(*) from history_file where load_id = ? group by state")
                .param(id)
                .query((row, n) -> Map.entry(FileOutcome.valueOf(row.getString(1)), row.getLong(2)))
                .list()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        Timestamp at = row.getTimestamp(column);
        return at == null ? null : at.toInstant();
    }

    private Timestamp now() {
        return Timestamp.from(clock.instant());
    }

    static FileOutcome outcome(UploadView upload) {
        return FileOutcome.valueOf(upload.state().name());
    }
}
