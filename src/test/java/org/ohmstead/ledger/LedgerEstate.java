package org.ohmstead.ledger;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Set;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.kernel.OhmicKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContextHolder;

/** Strings to survey, each in an area and site of its own, and people who survey them. */
final class LedgerEstate {

    static final ZoneId SITE_ZONE = ZoneId.of("Europe/Lisbon");

    private static int count;

    private final JdbcClient jdbc;

    LedgerEstate(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A string as the register knows it. */
    record Place(long areaId, long siteId, long stringId, int positions) {}

    Place stringOf(int positions) {
        String code = "LDG-" + ++count;
        long area = id("insert into area (code, name) values (?, 'Ledger area') returning id", code);
        long site = id(
                "insert into site (area_id, code, name, time_zone) values (?, ?, 'Ledger site', 'Europe/Lisbon')"
                        + " returning id",
                area,
                code);
        long jarType = id(
                "insert into jar_type (code, technology, cells_per_jar, nominal_volts, rated_ampere_hours, rated_hours)"
                        + " values (?, 'VENTED_LEAD_ACID', 1, 2, 500, 10) returning id",
                code);
        long string = id(
                "insert into battery_string (site_id, name, jar_type_id, positions, tiers, in_service_on)"
                        + " values (?, 'A', ?, ?, ?::integer[], '2018-01-01') returning id",
                site,
                jarType,
                positions,
                "{" + positions + "}");
        jdbc.sql(
                        "insert into link (string_id, ordinal, kind)"
                                + " select ?, n, case when n in (0, ?) then 'TERMINAL' else 'STRAP' end from generate_series(0, ?) n")
                .params(string, positions, positions)
                .update();
        return new Place(area, site, string, positions);
    }

    static SurveyFacts surveyOf(Place place, String takenAt) {
        Instant instant = Instant.parse(takenAt);
        return SurveyFacts.of(
                place.stringId(), instant, instant.atZone(SITE_ZONE).toLocalDate(), OhmicKind.IMPEDANCE);
    }

    static void signIn(Role role, Reach reach) {
        Person person = new Person(7, role.name().toLowerCase(java.util.Locale.ROOT) + ".test", "Test", role, reach);
        SecurityContextHolder.getContext().setAuthentication(new PersonAuthentication(person));
    }

    static Reach only(Place place) {
        return new Reach(false, Set.of(place.areaId()));
    }

    private long id(String sql, Object... parameters) {
        return jdbc.sql(sql).params(parameters).query(Long.class).single();
    }
}
