package org.ohmstead.ledger;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmstead.access.Reach;
import org.postgresql.jdbc.PgStatement;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementCreator;
import org.springframework.jdbc.core.PreparedStatementSetter;
import org.springframework.jdbc.core.ResultSetExtractor;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.RowMapperResultSetExtractor;
import org.springframework.stereotype.Component;

/** The ledger's queries for whole surveys. */
@Component
class SurveyReader {

    private static final String STANDING =
            "select " + SurveyRow.COLUMNS + " from standing_survey s where s.string_id = ? order by s.taken_at, s.id";
    private static final String LATEST = "select " + SurveyRow.COLUMNS + """
             from unnest(?::bigint[]) as wanted (string_id)
            cross join lateral (
                select * from standing_survey st where st.string_id = wanted.string_id
                order by st.taken_at desc, st.id desc limit ?) s
            order by s.string_id, s.taken_at, s.id""";
    private static final String ALL = "select " + SurveyRow.COLUMNS_WITH_WITHDRAWAL
            + " from survey s left join withdrawn_survey w on w.survey_id = s.id ";
    private static final String STREAM = "select " + SurveyRow.COLUMNS + """
             from standing_survey s
            where ? or s.string_id in (
                select b.id from battery_string b join site on site.id = b.site_id where site.area_id = any (?))
            order by s.string_id, s.taken_at, s.id""";
    private static final String RECORDED_AT = "select " + SurveyRow.COLUMNS + """
             from unnest(?::bigint[], ?::timestamptz[]) as wanted (string_id, taken_at)
            join survey s using (string_id, taken_at)""";

    private static final String SURVEYED = """
            select wanted.string_id from unnest(?::bigint[]) as wanted (string_id)
            where exists (select from survey s where s.string_id = wanted.string_id)""";

    private static final RowMapper<SurveyRecord> PLAIN = (row, n) -> SurveyRow.read(row);
    private static final RowMapper<SurveyRecord> WITH_WITHDRAWAL = (row, n) -> SurveyRow.readWithWithdrawal(row);

    /** Rows the stream holds at a time. */
    private static final int FETCH_SIZE = 500;

    private final JdbcTemplate jdbc;

    SurveyReader(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    List<SurveyRecord> standing(long stringId) {
        return list(STANDING, statement -> statement.setLong(1, stringId), PLAIN);
    }

    /** Of each string, its latest; oldest first. */
    List<SurveyRecord> latest(List<Long> stringIds, int each) {
        PreparedStatementSetter parameters = statement -> {
            statement.setArray(1, statement.getConnection().createArrayOf("int8", stringIds.toArray()));
            statement.setInt(2, each);
        };
        return list(LATEST, parameters, PLAIN);
    }

    List<SurveyRecord> standingAndWithdrawn(long stringId) {
        String sql = ALL + "where s.string_id = ? order by s.taken_at, s.id";
        return list(sql, statement -> statement.setLong(1, stringId), WITH_WITHDRAWAL);
    }

    Optional<SurveyRecord> find(long surveyId) {
        String sql = ALL + "where s.id = ?";
        return list(sql, statement -> statement.setLong(1, surveyId), WITH_WITHDRAWAL).stream()
                .findFirst();
    }

    /** Those of the strings of which any survey was ever recorded. */
    Set<Long> surveyed(List<Long> stringIds) {
        PreparedStatementSetter parameters = statement ->
                statement.setArray(1, statement.getConnection().createArrayOf("int8", stringIds.toArray()));
        return Set.copyOf(list(SURVEYED, parameters, (row, n) -> row.getLong(1)));
    }

    /** Every survey ever recorded, also withdrawn ones, of one of these strings at one of these instants. */
    List<SurveyRecord> recordedAt(List<SurveyFacts> moments) {
        return list(RECORDED_AT, statement -> bindMoments(statement, moments), PLAIN);
    }

    /** Standing surveys within reach, by string and time, through a cursor; wants a transaction around it. */
    void stream(Reach reach, Consumer<SurveyRecord> consumer) {
        jdbc.query(cursor(STREAM), statement -> bindReach(statement, reach), rows -> {
            while (rows.next()) {
                consumer.accept(SurveyRow.read(rows));
            }
            return true;
        });
    }

    private <T> List<T> list(String sql, PreparedStatementSetter parameters, RowMapper<T> mapper) {
        ResultSetExtractor<List<T>> rows = new RowMapperResultSetExtractor<>(mapper);
        return Objects.requireNonNull(jdbc.query(binary(sql), parameters, rows));
    }

    private static void bindMoments(PreparedStatement statement, List<SurveyFacts> moments) throws SQLException {
        statement.setArray(1, statement.getConnection().createArrayOf("int8", strings(moments)));
        statement.setArray(2, statement.getConnection().createArrayOf("timestamptz", instants(moments)));
    }

    private static void bindReach(PreparedStatement statement, Reach reach) throws SQLException {
        statement.setBoolean(1, reach.everywhere());
        statement.setArray(2, statement.getConnection().createArrayOf("int8", reach.areaIdArray()));
    }

    private static PreparedStatementCreator binary(String sql) {
        return connection -> inBinary(connection.prepareStatement(sql));
    }

    private static PreparedStatementCreator cursor(String sql) {
        return connection -> {
            PreparedStatement statement = connection.prepareStatement(
                    sql, ResultSet.TYPE_FORWARD_ONLY, ResultSet.CONCUR_READ_ONLY, ResultSet.CLOSE_CURSORS_AT_COMMIT);
            statement.setFetchSize(FETCH_SIZE);
            return inBinary(statement);
        };
    }

    /** Asks for the binary form of the result from the first execution on. */
    private static PreparedStatement inBinary(PreparedStatement statement) throws SQLException {
        statement.unwrap(PgStatement.class).setPrepareThreshold(-1);
        return statement;
    }

    private static Object[] strings(List<SurveyFacts> moments) {
        return moments.stream().map(SurveyFacts::stringId).toArray();
    }

    private static Object[] instants(List<SurveyFacts> moments) {
        List<OffsetDateTime> instants = new ArrayList<>();
        moments.forEach(facts -> instants.add(facts.takenAt().atOffset(ZoneOffset.UTC)));
        return instants.toArray();
    }
}
