package org.ohmstead.assessment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.stereotype.Component;

/** How far the forecast has followed each string. Lost rows cost time, nothing else: they are made again. */
@Component
class ForecastStates {

    private static final String KEEP = """
            insert into forecast_state (string_id, surveys, seen_fingerprint, state, survey_ids, innovations, variances)
            values (?, ?, ?, ?, ?, ?, ?)
            on conflict (string_id) do update
            set surveys = excluded.surveys, seen_fingerprint = excluded.seen_fingerprint, state = excluded.state,
                survey_ids = excluded.survey_ids, innovations = excluded.innovations, variances = excluded.variances""";

    private final JdbcTemplate jdbc;

    ForecastStates(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    Map<Long, Followed> of(Collection<Long> strings) {
        Map<Long, Followed> found = new HashMap<>();
        if (!strings.isEmpty()) {
            RowCallbackHandler keep = row -> found.put(row.getLong("string_id"), followed(row));
            jdbc.query("select * from forecast_state where string_id = any (?)", keep, (Object)
                    strings.toArray(Long[]::new));
        }
        return found;
    }

    void store(List<Judged> judged) {
        jdbc.batchUpdate(KEEP, judged, judged.size(), (statement, one) -> {
            Followed followed = one.followed();
            statement.setLong(1, one.stringId());
            statement.setInt(2, followed.surveys());
            statement.setBytes(3, followed.fingerprint());
            statement.setBytes(4, followed.state());
            statement.setObject(5, followed.surveyIds());
            statement.setObject(6, followed.innovations());
            statement.setObject(7, followed.variances());
        });
    }

    private static Followed followed(ResultSet row) throws SQLException {
        return new Followed(
                row.getInt("surveys"),
                row.getBytes("seen_fingerprint"),
                row.getBytes("state"),
                (Long[]) row.getArray("survey_ids").getArray(),
                numbers(row, "innovations"),
                numbers(row, "variances"));
    }

    private static @Nullable Double[] numbers(ResultSet row, String column) throws SQLException {
        return (Double[]) row.getArray(column).getArray();
    }
}
