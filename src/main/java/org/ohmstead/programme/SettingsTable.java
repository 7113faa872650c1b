package org.ohmstead.programme;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmstead.programme.StringSettings.Assignment;
import org.ohmstead.programme.rules.Election;
import org.ohmstead.programme.rules.OwnInterval;
import org.ohmstead.programme.rules.Waiver;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads what people decided for strings. */
@Component
class SettingsTable {

    private final JdbcClient jdbc;

    SettingsTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private record Row<T>(long stringId, String requirement, T value) {}

    /** In four queries; one when no string has a programme. Strings without one are left out. */
    Map<Long, StringSettings> of(Collection<Long> stringIds) {
        Map<Long, List<Assignment>> assignments = assignments(stringIds);
        Set<Long> ids = assignments.keySet();
        Map<Long, StringSettings> found = new HashMap<>();
        if (!ids.isEmpty()) {
            Map<Long, Map<String, List<Election>>> elections = read(
                    "programme_election",
                    "from_on",
                    ids,
                    row -> new Election(day(row, "from_on"), row.getString("branch")));
            Map<Long, Map<String, List<OwnInterval>>> own = read(
                    "programme_own_interval",
                    "from_on",
                    ids,
                    row -> new OwnInterval(day(row, "from_on"), row.getObject("months", Integer.class)));
            Map<Long, Map<String, List<Waiver>>> waivers = read(
                    "duty_waiver",
                    "granted_on",
                    ids,
                    row -> new Waiver(
                            day(row, "granted_on"),
                            day(row, "until_on"),
                            row.getString("reason"),
                            row.getObject("ended_on", LocalDate.class)));
            assignments.forEach((id, packs) -> found.put(
                    id,
                    new StringSettings(
                            packs,
                            elections.getOrDefault(id, Map.of()),
                            own.getOrDefault(id, Map.of()),
                            waivers.getOrDefault(id, Map.of()))));
        }
        return found;
    }

    /** The strings that were ever under that pack. */
    List<Long> under(String pack) {
        return jdbc.sql("select distinct string_id from string_programme where pack = ?")
                .param(pack)
                .query(Long.class)
                .list();
    }

    private Map<Long, List<Assignment>> assignments(Collection<Long> stringIds) {
        return jdbc
                .sql("select * from string_programme where string_id = any (?) order by string_id, from_on")
                .param(stringIds.toArray(Long[]::new))
                .query((row, n) -> new Row<>(
                        row.getLong("string_id"), "", new Assignment(day(row, "from_on"), row.getString("pack"))))
                .list()
                .stream()
                .collect(groupingBy(Row::stringId, mapping(Row::value, toList())));
    }

    private interface Reader<T> {

        T read(ResultSet row) throws SQLException;
    }

    private <T> Map<Long, Map<String, List<T>>> read(String table, String order, Set<Long> ids, Reader<T> reader) {
        RowMapper<Row<T>> mapper =
                (row, n) -> new Row<>(row.getLong("string_id"), row.getString("requirement"), reader.read(row));
        return jdbc
                .sql("select * from " + table + " where string_id = any (?) order by " + order)
                .param(ids.toArray(Long[]::new))
                .query(mapper)
                .list()
                .stream()
                .collect(groupingBy(
                        Row::stringId, Collectors.groupingBy(Row::requirement, mapping(Row::value, toList()))));
    }

    private static LocalDate day(ResultSet row, String column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }
}
