package org.ohmstead.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import org.ohmstead.access.Reach;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The ledger's lists of surveys, without readings. */
@Component
class SurveyEntries {

    private static final String COLUMNS = """
            select s.id, s.string_id, site.code, site.name as site_name, b.name as string_name, s.taken_at, s.taken_on,
                   s.taken_by, s.recorded_at, s.recorded_by,
                   not exists (select from withdrawn_survey w where w.survey_id = s.id) as stands
            """;
    private static final String IN_REACH = "(:everywhere or site.area_id = any (:areas))";

    // ids rise with the time of recording, and have an index
    private static final String RECORDED = COLUMNS + """
            from survey s join battery_string b on b.id = s.string_id join site on site.id = b.site_id
            where\s""" + IN_REACH + " order by s.id desc limit :limit";

    private static final String TAKEN = COLUMNS + """
            from site join battery_string b on b.site_id = site.id
            cross join lateral (
              select * from survey where survey.string_id = b.id order by taken_at desc, id desc limit :limit) s
            where site.id = :site and\s""" + IN_REACH + " order by s.taken_at desc, s.id desc limit :limit";

    private final JdbcClient jdbc;

    SurveyEntries(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<SurveyEntry> recorded(Reach reach, int limit) {
        return limitedTo(reach, jdbc.sql(RECORDED))
                .param("limit", limit)
                .query(SurveyEntries::entry)
                .list();
    }

    List<SurveyEntry> takenAt(long siteId, Reach reach, int limit) {
        return limitedTo(reach, jdbc.sql(TAKEN))
                .param("site", siteId)
                .param("limit", limit)
                .query(SurveyEntries::entry)
                .list();
    }

    private static JdbcClient.StatementSpec limitedTo(Reach reach, JdbcClient.StatementSpec statement) {
        return statement.param("everywhere", reach.everywhere()).param("areas", reach.areaIdArray());
    }

    private static SurveyEntry entry(ResultSet row, int n) throws SQLException {
        return new SurveyEntry(
                row.getLong("id"),
                row.getLong("string_id"),
                row.getString("code"),
                row.getString("site_name"),
                row.getString("string_name"),
                row.getObject("taken_at", OffsetDateTime.class).toInstant(),
                row.getObject("taken_on", LocalDate.class),
                row.getString("taken_by"),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                row.getString("recorded_by"),
                row.getBoolean("stands"));
    }
}
