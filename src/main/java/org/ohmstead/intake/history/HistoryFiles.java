package org.ohmstead.intake.history;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the files of a history with what became of them. */
@Repository
class HistoryFiles {

    private static final String SELECT = """
            select f.*, u.survey_id, site.code || ' / ' || s.name as string
            from history_file f
            left join upload u on u.id = f.upload_id
            left join battery_string s on s.id = u.string_id
            left join site on site.id = s.site_id
            where f.load_id = :load and (:outcome::text is null or f.state = :outcome)
            """;

    private final JdbcClient jdbc;

    HistoryFiles(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** In the order of the history, after the file of that number. */
    List<HistoryFile> after(UUID loadId, @Nullable FileOutcome outcome, int number, int limit) {
        return asked(SELECT + " and f.ordinal > :after order by f.ordinal limit :limit", loadId, outcome)
                .param("after", number)
                .param("limit", limit)
                .query((row, n) -> file(row))
                .list();
    }

    /** All of them, one by one. */
    void each(UUID loadId, @Nullable FileOutcome outcome, Consumer<HistoryFile> consumer) {
        try (Stream<HistoryFile> all =
                asked(SELECT + " order by f.ordinal", loadId, outcome).query((row, n) -> file(row)).stream()) {
            all.forEach(consumer);
        }
    }

    private JdbcClient.StatementSpec asked(String sql, UUID loadId, @Nullable FileOutcome outcome) {
        return jdbc.sql(sql)
                .withFetchSize(500)
                .param("load", loadId)
                .param("outcome", outcome == null ? null : outcome.name(), java.sql.Types.VARCHAR);
    }

    private static HistoryFile file(ResultSet row) throws SQLException {
        return new HistoryFile(
                row.getInt("ordinal"),
                row.getString("file_name"),
                HexFormat.of().formatHex(row.getBytes("sha256")),
                row.getObject("taken", LocalDateTime.class),
                FileOutcome.valueOf(row.getString("state")),
                row.getObject("upload_id", UUID.class),
                row.getObject("survey_id", Long.class),
                row.getString("string"),
                row.getString("said"));
    }
}
