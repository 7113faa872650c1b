package org.ohmstead.assessment;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ohmstead.assessment.model.estate.LeavingReason;
import org.ohmstead.assessment.model.estate.LifeCurve;
import org.ohmstead.assessment.model.estate.Stay;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** How long each jar stayed where it was, to the month. */
@Component
class JarLives {

    // a retired string's jars are out of sight from that day on
    private static final String STAYS = """
            with stay as (
              select t.code as jar_type, o.string_id, o.left_reason, o.from_on,
                     case when o.until_on <= :today then o.until_on end as left_on,
                     least(coalesce(o.until_on, :today), coalesce(b.retired_on, :today), :today) as seen_on
              from occupancy o join battery_string b on b.id = o.string_id join jar_type t on t.id = o.jar_type_id
              where o.from_on < :today),
            renewed as (
              select s.string_id, s.left_on from stay s join battery_string b on b.id = s.string_id
              where s.left_on is not null group by s.string_id, s.left_on, b.positions having 2 * count(*) > b.positions)
            select jar_type, (seen_on - from_on) / 30 as months, left_on is not null as has_left,
                   case when left_on is null then '' else left_reason end as reason,
                   renewed.left_on is not null as with_most, count(*) as jars
            from stay left join renewed using (string_id, left_on)
            where seen_on > from_on
            group by 1, 2, 3, 4, 5 order by 1, 2, 3, 4, 5""";

    /** A stay of less than a month counts as half of one. */
    private static final double SHORTEST_MONTHS = 0.5;

    private static final double MONTHS_PER_YEAR = 365.25 / 30;

    private record TypedStay(String jarType, Stay stay) {}

    private final JdbcClient jdbc;

    JarLives(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** By jar type, over the whole estate. */
    List<LifeCurve> curves(LocalDate today) {
        List<TypedStay> stays = jdbc.sql(STAYS)
                .param("today", today)
                .query((row, n) -> new TypedStay(row.getString("jar_type"), stay(row)))
                .list();
        Map<String, List<Stay>> byType = stays.stream()
                .collect(groupingBy(TypedStay::jarType, TreeMap::new, mapping(TypedStay::stay, toList())));
        return byType.entrySet().stream()
                .map(type -> LifeCurve.of(type.getKey(), type.getValue()))
                .toList();
    }

    private static Stay stay(ResultSet row) throws SQLException {
        double years = Math.max(SHORTEST_MONTHS, row.getInt("months")) / MONTHS_PER_YEAR;
        Stay.End end = row.getBoolean("has_left")
                ? LeavingReason.of(row.getString("reason"), row.getBoolean("with_most"))
                : Stay.End.GOES_ON;
        return new Stay(years, end, row.getInt("jars"));
    }
}
