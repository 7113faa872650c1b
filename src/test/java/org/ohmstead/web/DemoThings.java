package org.ohmstead.web;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Existing things that stand for the variables in addresses: some of the demo estate; what it lacks is put there within the
 * caller's transaction.
 */
final class DemoThings {

    private static final Pattern VARIABLE = Pattern.compile("\\{\\w+}");

    private static final String STRING = "(select min(string_id) from capacity_test)";
    private static final String OCCUPANCY = "select min(id) from occupancy where string_id = " + STRING;
    private static final String REMAKE = "insert into link_remake (string_id, ordinal, remade_on) values (" + STRING
            + ", 1, '2026-03-09') returning id";
    private static final String HELD = "select id from upload where state = 'HELD' order by received_at, id limit 1";
    private static final String JAR_TYPE = "select min(code) from jar_type";
    private static final String EXPORT = """
            insert into report_export (id, asked_by, report, form, state, asked_at)
            values (gen_random_uuid(), :username, 'condition', 'csv', 'ASKED', '2026-03-10T09:00Z') returning id""";
    private static final String COLUMN_MAP = """
            insert into column_map (name, version, definition, saved_at, saved_by)
            values ('a map', 1, '{}', '2026-03-10T09:00Z', 'engineer') returning name""";
    private static final String HISTORY = """
            insert into history_load (id, sha256, file_name, byte_count, received_at, received_by)
            values (gen_random_uuid(), sha256('x'), 'history.zip', 1, '2026-03-10T09:00Z', 'engineer') returning id""";

    /** By the end of the address up to the variable, all variables as stars; the longest that fits holds. */
    private static final Map<String, String> QUERIES = Map.ofEntries(
            Map.entry("/strings/*", "select " + STRING),
            Map.entry("/strings/*/occupancies/*", OCCUPANCY),
            Map.entry("/register/strings/*/jars/*", OCCUPANCY),
            Map.entry("/strings/*/jars/*", "select 1"),
            Map.entry("/strings/*/links/*", "select 1"),
            Map.entry("/strings/*/remakes/*", REMAKE),
            Map.entry("/register/strings/*/jars/remakes/*", REMAKE),
            Map.entry("/strings/*/programme/waivers/*", """
                    insert into duty_waiver (string_id, requirement, granted_on, until_on, reason, set_at, set_by)
                    values ((select min(string_id) from capacity_test), 'any', '2026-03-01', '2026-06-01', 'a reason',
                      '2026-03-01T09:00Z', 'engineer') returning id"""),
            Map.entry("/sites/*", "select min(code) from site"),
            Map.entry("/areas/*", "select min(code) from area"),
            Map.entry("/jar-types/*", JAR_TYPE),
            Map.entry("/library/*", JAR_TYPE),
            Map.entry("/lessons/*", JAR_TYPE),
            Map.entry("/capacity/*", JAR_TYPE),
            Map.entry("/library/packs/*", "select min(code) from rule_pack"),
            Map.entry("/rule-packs/*", "select min(code) from rule_pack"),
            Map.entry("/overrules/*", """
                    insert into overrule (string_id, kind, urgency, instead_of, reason, made_at, made_by, last_day)
                    values ((select min(string_id) from capacity_test), 'STRING', 'ACT', 'CLEAR', 'a reason',
                      '2026-03-01T09:00Z', 'engineer', '2026-06-01') returning id"""),
            Map.entry("/work/*", "select min(id) from work_item where state = 'RAISED'"),
            Map.entry("/rounds/*", "select min(round_id) from round_duty"),
            Map.entry("/rounds/*/sheets/*", """
                    select min(string_id) from round_duty where round_id = (select min(round_id) from round_duty)"""),
            Map.entry("/visits/*", "select min(id) from visit"),
            Map.entry("/visits/*/photos/*", """
                    insert into visit_photo (visit_id, file_name, media_type, sha256, bytes, recorded_at, recorded_by)
                    values ((select min(id) from visit), 'x.png', 'image/png', sha256('x'), 'x', '2026-03-01T09:00Z',
                      'engineer') returning id"""),
            Map.entry("/capacity-tests/*", "select min(id) from capacity_test"),
            Map.entry("/surveys/*", "select min(id) from survey"),
            Map.entry("/intake/*", HELD),
            Map.entry("/uploads/*", HELD),
            Map.entry("?upload", HELD),
            Map.entry("/history/*", HISTORY),
            Map.entry("/reports/exports/*", EXPORT),
            Map.entry("/exports/*", EXPORT),
            Map.entry("/reports/subscriptions/*", """
                    insert into report_subscription (user_id, email, report, form, rhythm, made_at)
                    values ((select id from app_user where username = :username), 'a@example.org', 'condition', 'pdf',
                      'WEEKLY', '2026-03-01T09:00Z') returning id"""),
            Map.entry("/column-maps/*", COLUMN_MAP),
            Map.entry("/intake/maps/retire?name", COLUMN_MAP),
            Map.entry("/people/*", "select min(id) from app_user where username <> :username"),
            Map.entry("/account/tokens/*", """
                    insert into api_token (user_id, label, token_sha256, created_at)
                    values ((select id from app_user where username = :username), 'a token', sha256('x'),
                      '2026-03-01T09:00Z') returning id"""),
            Map.entry("/compliance/*", "select '2025-Q4'"),
            Map.entry("?quarter", "select '2025-Q4'"),
            Map.entry("/reports/*", "select 'condition'"),
            Map.entry("/register/*", "select 'strings'"),
            Map.entry("/file.*", "select 'csv'"),
            Map.entry("/welcome/*", "select 'unknown'"),
            Map.entry("/calendar/*", "select 'unknown'"));

    private final JdbcClient jdbc;

    DemoThings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param username who asks: some things are a person's own */
    String address(String pattern, String username) {
        String stars = VARIABLE.matcher(pattern).replaceAll("*");
        StringBuilder address = new StringBuilder();
        int end = 0;
        Matcher variable = VARIABLE.matcher(pattern);
        while (variable.find()) {
            end = stars.indexOf('*', end) + 1;
            String query = query(stars.substring(0, end))
                    .orElseThrow(() -> new AssertionError(
                            "Say in DemoThings what stands for " + variable.group() + " in " + pattern));
            variable.appendReplacement(address, Matcher.quoteReplacement(found(query, username)));
        }
        return variable.appendTail(address).toString();
    }

    /** For a parameter that must name something existing. */
    Optional<String> parameter(String pattern, String name, String username) {
        return query(pattern + "?" + name).map(query -> found(query, username));
    }

    private static Optional<String> query(String asked) {
        return QUERIES.keySet().stream()
                .filter(asked::endsWith)
                .max(Comparator.comparingInt(String::length))
                .map(QUERIES::get);
    }

    private String found(String query, String username) {
        List<Object> found = jdbc.sql(query).param("username", username).query().singleColumn();
        if (found.isEmpty() || found.get(0) == null) {
            throw new AssertionError("The demo estate lacks what DemoThings looks for: " + query);
        }
        return found.get(0).toString();
    }
}
