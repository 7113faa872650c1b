package org.ohmstead.ledger;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmstead.kernel.NotFound;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.stereotype.Component;

/** Where the strings lie and how long they are: read from the register's tables, one statement a question. */
@Component
class StringPlaces {

    private static final String SELECT = """
            select b.id, site.code || ' / ' || b.name, site.area_id, b.positions
            from battery_string b join site on site.id = b.site_id
            where b.id = any (?)""";
    private static final RowMapper<StringPlace> PLACE =
            (row, n) -> new StringPlace(row.getLong(1), row.getString(2), row.getLong(3), row.getInt(4));

    private final JdbcTemplate jdbc;

    StringPlaces(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    StringPlace of(long stringId) {
        return of(Set.of(stringId)).values().iterator().next();
    }

    /** All of them, or NotFound. */
    Map<Long, StringPlace> of(Collection<Long> stringIds) {
        Map<Long, StringPlace> places = jdbc
                .query(
                        SELECT,
                        statement -> statement.setArray(
                                1, statement.getConnection().createArrayOf("int8", stringIds.toArray())),
                        PLACE)
                .stream()
                .collect(Collectors.toMap(StringPlace::stringId, Function.identity()));
        stringIds.stream().filter(id -> !places.containsKey(id)).findFirst().ifPresent(id -> {
            throw NotFound.of("string", id);
        });
        return places;
    }
}
