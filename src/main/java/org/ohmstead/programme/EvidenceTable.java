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

    /** How many units each survey covered; of the links, which elements are missing. */
    private static final String SURVEYS = """
            select s.string_id, s.id, s.taken_on, cardinality(s.ohmic) as units,
                   cardinality(array_remove(s.ohmic, null)) as ohmic,
                   cardinality(array_remove(s.volts, null)) as volts,
                   cardinality(array_remove(s.celsius, null)) as celsius,
                   cardinality(array_remove(s.gravity, null)) as gravity,
                   s.string_volts is not null as string_volts, s.float_amps is not null as float_amps,
                   s.straps_per_link, s.link_microohms is not null as with_links,
                   array_positions(s.link_microohms, null) as missing_straps
            from standing_survey s where s.string_id = any (:ids)""";

    private static final String LINKS =
            "select string_id, ordinal, straps from link where string_id = any (:ids) and straps > 1";
    private static final String VISITS = """
            select v.string_id, v.id, v.visited_on, i.item
            from standing_visit v join visit_item i on i.visit_id = v.id where v.string_id = any (:ids)""";
    private static final String TESTS =
            "select string_id, id, tested_on from standing_capacity_test where string_id = any (:ids)";

    private final JdbcClient jdbc;

    EvidenceTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** In four queries, however many strings. */
    Map<Long, List<Evidence>> of(Collection<Long> stringIds) {
        Map<Long, List<Evidence>> found = new HashMap<>();
        if (stringIds.isEmpty()) {
            return found;
        }
        stringIds.forEach(id -> found.put(id, new ArrayList<>()));
        Long[] ids = stringIds.toArray(Long[]::new);
        Map<Long, Map<Integer, Integer>> straps = straps(ids);
        jdbc.sql(SURVEYS).param("ids", ids).query(row -> {
            readSurvey(row, into(found, row), straps.getOrDefault(row.getLong("string_id"), Map.of()));
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

    /** By string and ordinal, of the links with several. */
    private Map<Long, Map<Integer, Integer>> straps(Long[] ids) {
        Map<Long, Map<Integer, Integer>> straps = new HashMap<>();
        jdbc.sql(LINKS).param("ids", ids).query(row -> {
            straps.computeIfAbsent(row.getLong("string_id"), id -> new HashMap<>())
                    .put(row.getInt("ordinal"), row.getInt("straps"));
        });
        return straps;
    }

    private static void readSurvey(ResultSet row, List<Evidence> into, Map<Integer, Integer> straps)
            throws SQLException {
        int units = row.getInt("units");
        add(row, into, EvidenceKind.READ_OHMIC, row.getInt("ohmic"), units);
        add(row, into, EvidenceKind.READ_VOLTS, row.getInt("volts"), units);
        add(row, into, EvidenceKind.READ_CELSIUS, row.getInt("celsius"), units);
        add(row, into, EvidenceKind.READ_GRAVITY, row.getInt("gravity"), units);
        if (row.getBoolean("with_links")) {
            Integer[] missing = (Integer[]) row.getArray("missing_straps").getArray();
            LinksRead links = LinksRead.of(units, row.getInt("straps_per_link"), missing, straps);
            add(row, into, EvidenceKind.READ_TERMINAL_LINKS, links.terminals(), 2);
            add(row, into, EvidenceKind.READ_INTERCELL_LINKS, links.intercell(), units - 1);
        }
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
