package org.ohmstead.assessment;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.ohmstead.assessment.model.estate.JarChances;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.stereotype.Component;

/** Every jar that sits somewhere today, with what is forecast of it; through a cursor. */
@Component
class JarsInUse {

    private static final int FETCH_SIZE = 2000;

    private static final String JARS = """
            select area.code as area, t.code as jar_type, o.from_on, a.as_of,
                   j.beyond_limit, j.chance_within_year, j.crosses_early, j.crosses_middle, j.crosses_late
            from occupancy o
            join battery_string b on b.id = o.string_id and (b.retired_on is null or b.retired_on > ?)
            join site on site.id = b.site_id
            join area on area.id = site.area_id
            join jar_type t on t.id = o.jar_type_id
            left join jar_assessment j on j.string_id = o.string_id and j.position = o.position
                                       and j.sitting_since = o.from_on and j.read_on is not null
            left join current_assessment c on c.string_id = o.string_id
            left join string_assessment a on a.id = c.assessment_id
            where o.from_on <= ? and (o.until_on is null or o.until_on > ?) and (? or site.area_id = any (?))""";

    /** @param chances null while nothing is forecast of it */
    record JarInUse(
            String area,
            String jarType,
            LocalDate since,
            @Nullable JarChances chances) {}

    private final JdbcTemplate jdbc;

    JarsInUse(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Wants a transaction around it. */
    void stream(Reach reach, LocalDate today, Consumer<JarInUse> consumer) {
        RowCallbackHandler each = row -> consumer.accept(jar(row));
        jdbc.query(
                connection -> {
                    PreparedStatement statement = connection.prepareStatement(JARS);
                    statement.setFetchSize(FETCH_SIZE);
                    statement.setObject(1, today);
                    statement.setObject(2, today);
                    statement.setObject(3, today);
                    statement.setBoolean(4, reach.everywhere());
                    statement.setArray(5, connection.createArrayOf("int8", reach.areaIdArray()));
                    return statement;
                },
                each);
    }

    private static JarInUse jar(ResultSet row) throws SQLException {
        Double beyond = row.getObject("beyond_limit", Double.class);
        return new JarInUse(
                row.getString("area"),
                row.getString("jar_type"),
                row.getObject("from_on", LocalDate.class),
                beyond == null
                        ? null
                        : new JarChances(
                                row.getObject("as_of", LocalDate.class),
                                beyond,
                                row.getDouble("chance_within_year"),
                                row.getObject("crosses_early", LocalDate.class),
                                row.getObject("crosses_middle", LocalDate.class),
                                row.getObject("crosses_late", LocalDate.class)));
    }
}
