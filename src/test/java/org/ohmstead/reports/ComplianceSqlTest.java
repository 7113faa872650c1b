package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.programme.RulePacks;
import org.ohmstead.programme.rules.Branch;
import org.ohmstead.programme.rules.Counting;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.programme.rules.Interval;
import org.ohmstead.programme.rules.Provenance;
import org.ohmstead.programme.rules.Requirement;
import org.ohmstead.programme.rules.RulePack;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A seeded random estate whose strings change packs, elect branches and back, keep shorter intervals, are waived, surveyed
 * in part, visited, tested and retired: the service's figures are those of the documented query.
 */
@ServiceTest
class ComplianceSqlTest {

    private static final String AREA = "SQL";

    private static final LocalDate FIRST = LocalDate.parse("2023-06-01");

    @Autowired
    private FleetRegister register;

    @Autowired
    private RulePacks packs;

    @Autowired
    private Compliance compliance;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    private final Random random = new Random(71);

    private LocalDate day() {
        return FIRST.plusDays(random.nextInt(980));
    }

    private static Requirement requirement(
            String code, EvidenceKind kind, double coverage, Interval interval, Integer own) {
        return new Requirement(
                code,
                "Do " + code,
                "1",
                Provenance.RECALLED,
                List.of(
                        new Branch("periodic", code, java.util.Set.of(kind), coverage, interval, own),
                        new Branch(
                                "test",
                                "test it",
                                java.util.Set.of(EvidenceKind.CAPACITY_TEST),
                                null,
                                Interval.ofMonths(18, Counting.END_OF_MONTH),
                                null),
                        new Branch("monitored", "watched", java.util.Set.of(), null, null, null)));
    }

    private static RulePack pack(String from, Requirement... requirements) {
        return new RulePack(
                "sql-pack", 1, "Own", LocalDate.parse(from), java.util.Set.of(), "own", "", List.of(requirements));
    }

    private void ownPack() {
        Requirement grounds =
                requirement("grounds", EvidenceKind.CHECK_GROUNDS, 1, Interval.ofMonths(2, Counting.TO_THE_DAY), null);
        Requirement links = requirement(
                "links", EvidenceKind.READ_INTERCELL_LINKS, 0.8, Interval.ofYears(1, Counting.END_OF_YEAR), 7);
        Requirement ohmic = requirement(
                "ohmic", EvidenceKind.READ_OHMIC, 0.9, Interval.ofMonths(6, Counting.FIXED_CALENDAR_QUARTER), 3);
        Requirement ends =
                requirement("ends", EvidenceKind.READ_TERMINAL_LINKS, 1, Interval.ofYears(1, Counting.TO_THE_DAY), 5);
        packs.save(pack("2020-01-01", grounds, ohmic));
        packs.save(pack("2024-08-01", grounds, links, ohmic, ends));
    }

    private void estate() {
        register.createArea(Entries.area(AREA));
        register.createJarType(Entries.jarType(AREA));
        ownPack();
        for (int i = 0; i < 30; i++) {
            register.createSite(Entries.site(AREA + "-" + i, AREA));
            long id = register.createString(Entries.string(AREA + "-" + i, "A", AREA, 5, 5))
                    .id();
            if (i % 9 == 8) {
                jdbc.sql("update battery_string set retired_on = ? where id = ?")
                        .params(day(), id)
                        .update();
            }
            assignments(id);
            decisions(id);
            records(id);
        }
    }

    private void assignments(long id) {
        TreeSet<LocalDate> days = new TreeSet<>(List.of(day(), day(), day()));
        for (LocalDate from : days) {
            String pack = List.of("protection-vented", "practice-vented", "sql-pack", "sql-pack", "empty")
                    .get(random.nextInt(5));
            jdbc.sql(
                            "insert into string_programme (string_id, from_on, pack, set_at, set_by) values (?, ?, ?, now(), 't')")
                    .params(id, from, pack)
                    .update();
        }
    }

    private String code() {
        return List.of("grounds", "links", "ohmic", "ends", "electrolyte-level", "cell-condition", "dc-supply-voltage")
                .get(random.nextInt(7));
    }

    private void decisions(long id) {
        for (int i = 0; i < 8; i++) {
            jdbc.sql("""
                            insert into programme_election (string_id, requirement, from_on, branch, set_at, set_by)
                            values (?, ?, ?, ?, now(), 't') on conflict do nothing""")
                    .params(
                            id,
                            code(),
                            day(),
                            List.of("periodic", "test", "monitored", "gone").get(random.nextInt(4)))
                    .update();
            jdbc.sql("""
                            insert into programme_own_interval (string_id, requirement, from_on, months, set_at, set_by)
                            values (?, ?, ?, ?, now(), 't') on conflict do nothing""")
                    .params(Arrays.asList(id, code(), day(), random.nextInt(4) == 0 ? null : 1 + random.nextInt(8)))
                    .update();
            LocalDate granted = day();
            boolean ended = random.nextInt(3) == 0;
            jdbc.sql("""
                            insert into duty_waiver (string_id, requirement, granted_on, until_on, reason, set_at, set_by,
                                                     ended_on, ended_at, ended_by)
                            values (?, ?, ?, ?, 'access', now(), 't', ?, case when ? then now() end, ?)""")
                    .params(Arrays.asList(
                            id,
                            code(),
                            granted,
                            granted.plusDays(random.nextInt(300)),
                            ended ? granted.plusDays(random.nextInt(90)) : null,
                            ended,
                            ended ? "t" : null))
                    .update();
        }
    }

    private void records(long id) {
        for (int i = 0; i < 14; i++) {
            visit(id, i % 5 == 4);
            if (i % 2 == 0) {
                survey(id, i % 6 == 4);
            }
        }
        jdbc.sql("""
                        insert into capacity_test (string_id, tested_on, tested_by, kind, method, rated_amps, rated_minutes,
                          discharge_amps, actual_minutes, celsius, reference_celsius, end_volts_per_cell, percent_capacity,
                          computation, recorded_at, recorded_by)
                        values (?, ?, 't', 'PERFORMANCE', 'RATE_ADJUSTED', 30, 480, 30, 470, 25, 25, 1.75, 97.9, '', now(), 't')""").params(id, day()).update();
    }

    private void visit(long id, boolean voided) {
        long visit = jdbc.sql("""
                        insert into visit (string_id, visited_on, visited_by, recorded_at, recorded_by)
                        values (?, ?, 't', now(), 't') returning id""").params(id, day()).query(Long.class).single();
        for (EvidenceKind kind : EvidenceKind.values()) {
            if (kind.isCheck() && random.nextInt(3) > 0) {
                jdbc.sql("insert into visit_item (visit_id, item, outcome) values (?, ?, 'SOUND')")
                        .params(visit, kind.name())
                        .update();
            }
        }
        if (voided) {
            jdbc.sql("insert into visit_void values (?, 'another string', now(), 't')")
                    .param(visit)
                    .update();
        }
    }

    private Float[] some(int count, int oneIn) {
        Float[] values = new Float[count];
        Arrays.setAll(values, i -> random.nextInt(oneIn) == 0 ? null : Float.valueOf(1));
        return values;
    }

    private void survey(long id, boolean withdrawn) {
        LocalDate on = day();
        int missing = List.of(4, 12, 1000).get(random.nextInt(3));
        jdbc.sql("""
                        insert into survey (string_id, taken_at, taken_on, recorded_at, recorded_by, ohmic_kind, ohmic, volts,
                          string_volts, straps_per_link, link_microohms)
                        values (?, ?::date, ?, now(), 't', 'IMPEDANCE', ?::real[], ?::real[], ?, 2, ?::real[])""")
                .params(Arrays.asList(
                        id,
                        on,
                        on,
                        some(10, missing),
                        random.nextBoolean() ? some(10, missing) : null,
                        random.nextBoolean() ? 120.0 : null,
                        random.nextInt(4) == 0 ? null : some(22, missing)))
                .update();
        if (withdrawn) {
            jdbc.sql("""
                            insert into survey_withdrawal (string_id, taken_at, survey_id, kind, at, by, reason)
                            select string_id, taken_at, id, 'VOIDED', now(), 't', 'wrong string' from survey
                            where string_id = ? order by id desc limit 1""").param(id).update();
        }
    }

    @Test
    void everyLineAndEveryFigureIsThatOfTheDocumentedQuery() {
        access.asSystem("test", () -> {
            estate();
            int seen = 0;
            TreeSet<String> states = new TreeSet<>();
            Quarter quarter = Quarter.parse("2024-Q1");
            for (int i = 0; i < 8; i++) {
                ComplianceSummary summary = compliance.summary(quarter, AREA);
                FiguresInSql.of(jdbc, quarter, AREA).agreeWith(summary);
                seen += summary.lines().size();
                summary.lines().forEach(line -> states.add(line.state().words()));
                quarter = quarter.after();
            }
            assertThat(seen).isGreaterThan(1000);
            assertThat(states).containsExactly("due", "late", "missed", "monitored", "on time", "waived");
            return null;
        });
    }
}
