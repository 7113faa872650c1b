package org.ohmstead.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.support.TestDatabase;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** Jars and links assessed before they were kept a string at a time are the same afterwards. */
class UnitsByStringTest {

    private static final List<String> QUERIES = List.of(
            "select * from jar_assessment order by string_id, position",
            "select * from link_assessment order by string_id, ordinal");

    private TestDatabase.Access database;
    private JdbcTemplate jdbc;

    @BeforeEach
    void stopBefore() {
        database = TestDatabase.create();
        jdbc = new JdbcTemplate(
                new DriverManagerDataSource(database.jdbcUrl(), database.username(), database.password()));
        migrate("22");
    }

    @Test
    void everyFieldOfEveryUnitIsKept() {
        // written in no order; the second string lacks all that may be missing
        jdbc.execute("""
                insert into jar_assessment
                select s, p, 'S-' || p, date '2020-01-01' + p, 'PLAN', date '2026-02-03', 'IMPEDANCE', p + 0.1, p + 0.2, 'SURVEY',
                  date '2020-07-01', 0.41, -0.02, 4.5, 0.03, 0.01, 0.05, 9, 2.23, 2.24, -0.01, 24.5, '[{"rule": "JAR_RISE"}]',
                  0.25, 0.5, 0.75, '2026-05-01', '2027-05-01', null, 0.3, 0.04, 'DRY_OUT'
                from generate_series(3, 1, -1) p, generate_series(1, 1) s""");
        jdbc.execute("""
                insert into jar_assessment (string_id, position, sitting_since, urgency)
                values (2, 2, '2021-01-01', 'CLEAR'), (2, 1, '2022-01-01', 'CLEAR')""");
        jdbc.execute("""
                insert into link_assessment
                select 1, o, 'STRAP', date '2020-01-01' + o, 'ACT', '2026-02-03', o, 0, o, 20, '2020-07-01', 0.2, 21, 0.1, 0.02, 0.01,
                  0.03, 8, 1.5, 0.01, '[{"rule": "LINK_RISE"}]', 0.1, 0.2, 0.3, null, null, null, 0.4, 0.05, null
                from generate_series(1, 0, -1) o""");
        jdbc.execute("insert into link_assessment (string_id, ordinal, kind, made_on, urgency)"
                + " values (2, 0, 'CABLE', '2021-01-01', 'CLEAR')");
        List<List<Map<String, Object>>> before = all();
        migrate("23");
        assertThat(before).extracting(List::size).containsExactly(5, 3);
        for (int i = 0; i < before.size(); i++) {
            assertThat(all().get(i))
                    .map(Map::toString)
                    .isEqualTo(before.get(i).stream().map(Map::toString).toList());
        }
    }

    private List<List<Map<String, Object>>> all() {
        return QUERIES.stream().map(jdbc::queryForList).map(this::sortedByName).toList();
    }

    private List<Map<String, Object>> sortedByName(List<Map<String, Object>> rows) {
        return rows.stream()
                .map(row -> (Map<String, Object>) new TreeMap<>(row))
                .toList();
    }

    private void migrate(String target) {
        Flyway.configure()
                .dataSource(database.jdbcUrl(), database.username(), database.password())
                .target(target)
                .load()
                .migrate();
    }
}
