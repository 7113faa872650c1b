package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ohmstead.programme.rules.Evidence;
import org.ohmstead.programme.rules.EvidenceKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Everything that was done at strings, from standing surveys, visits and capacity tests. */
@Component
class EvidenceTable {

    /**
     * How many units each survey covered. A link is read when all its straps are; the links are only looked at one by
     * one where some reading is missing.
     */
    private static final String SURVEYS = """
            with built as (
              select l.string_id, sum(l.straps) as straps, max(l.ordinal) as last
              from link l where l.string_id = any (:ids) group by l.string_id)
            select s.string_id, s.id, s.taken_on, cardinality(s.ohmic) as units,
                   cardinality(array_remove(s.ohmic, null)) as ohmic,
                   cardinality(array_remove(s.volts, null)) as volts,
                   cardinality(array_remove(s.celsius, null)) as celsius,
                   cardinality(array_remove(s.gravity, null)) as gravity,
                   s.string_volts is not null as string_volts, s.float_amps is not null as float_amps,
                   case when s.link_microohms is null then 0
                        when cardinality(array_remove(s.link_microohms, null)) >= b.straps then 2
                        else (select count(*) from link l where l.string_id = s.string_id and l.ordinal in (0, b.last)
                              and (select count(r) from unnest(s.link_microohms[l.ordinal * s.straps_per_link + 1
                                   : (l.ordinal + 1) * s.straps_per_link]) r) >= l.straps)
                   end as terminals,
                   case when s.link_microohms is null then 0
                        when cardinality(array_remove(s.link_microohms, null)) >= b.straps then b.last - 1
                        else (select count(*) from link l
                              where l.string_id = s.string_id and l.ordinal > 0 and l.ordinal < b.last
                              and (select count(r) from unnest(s.link_microohms[l.ordinal * s.straps_per_link + 1
                                   : (l.ordinal + 1) * s.straps_per_link]) r) >= l.straps)
                   end as intercell
            from standing_survey s left join built b on b.string_id = s.string_id
            where s.string_id = any (:ids)""";

    private static final String VISITS = """
            select v.string_id, v.id, v.visited_on, i.item
            from standing_visit v join visit_item i on i.visit_id = v.id where v.string_id = any (:ids)""";
    private static final String TESTS =
            "select string_id, id, tested_on from standing_capacity_test where string_id = any (:ids)";

    private final JdbcClient jdbc;

    EvidenceTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** In three queries, however many strings. */
    Map<Long, List<Evidence>> of(Collection<Long> stringIds) {
        Map<Long, List<Evidence>> found = new HashMap<>();
        if (stringIds.isEmpty()) {
            return found;
        }
        stringIds.forEach(id -> found.put(id, new ArrayList<>()));
        Long[] ids = stringIds.toArray(Long[]::new);
        jdbc.sql(SURVEYS).param("ids", ids).query(row -> {
            readSurvey(row, into(found, row));
        });
        jdbc.sql(VISITS).param("ids", ids).query(row -> {
            EvidenceKind kind = EvidenceKind.valueOf(row.getString("item"));
            into(found, row).add(Evidence.whole(kind, day(row, "visited_on"), row.getLong("id")));
        });
        jdbc.sql(TESTS).param("ids", ids).query(row -> {
            into(found, row).add(Evidence.whole(EvidenceKind.CAPACITY_TEST, day(row, "tested_on"), row.getLong("id")));
        });
        return found;
    }

    private static void readSurvey(ResultSet row, List<Evidence> into) throws SQLException {
        int units = row.getInt("units");
        add(row, into, EvidenceKind.READ_OHMIC, row.getInt("ohmic"), units);
        add(row, into, EvidenceKind.READ_VOLTS, row.getInt("volts"), units);
        add(row, into, EvidenceKind.READ_CELSIUS, row.getInt("celsius"), units);
        add(row, into, EvidenceKind.READ_GRAVITY, row.getInt("gravity"), units);
        add(row, into, EvidenceKind.READ_TERMINAL_LINKS, row.getInt("terminals"), 2);
        add(row, into, EvidenceKind.READ_INTERCELL_LINKS, row.getInt("intercell"), units - 1);
        add(row, into, EvidenceKind.READ_STRING_VOLTS, row.getBoolean("string_volts") ? 1 : 0, 1);
        add(row, into, EvidenceKind.READ_FLOAT_AMPS, row.getBoolean("float_amps") ? 1 : 0, 1);
    }

    /** What was not read at all is no evidence. */
    private static void add(ResultSet row, List<Evidence> into, EvidenceKind kind, int covered, int outOf)
            throws SQLException {
        if (covered > 0) {
            into.add(new Evidence(kind, day(row, "taken_on"), covered, outOf, row.getLong("id")));
        }
    }

    private static List<Evidence> into(Map<Long, List<Evidence>> found, ResultSet row) throws SQLException {
        return Objects.requireNonNull(found.get(row.getLong("string_id")));
    }

    private static LocalDate day(ResultSet row, String column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }
}
