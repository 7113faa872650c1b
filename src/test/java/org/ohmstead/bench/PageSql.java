package org.ohmstead.bench;

import org.springframework.jdbc.core.JdbcTemplate;

/** The statements that a page cannot do without, and nothing made of their rows. */
final class PageSql {

    private static final String[] OF_STRING = {
        "select b.*, s.*, t.* from battery_string b join site s on s.id = b.site_id join jar_type t on t.id = b.jar_type_id"
                + " where b.id = ?",
        "select * from link where string_id = ? order by ordinal",
        "select * from occupancy where string_id = ? order by position",
        "select s.*, array_send(ohmic), array_send(volts), array_send(celsius), array_send(link_microohms)"
                + " from standing_survey s where string_id = ? order by taken_at",
        "select a.* from current_assessment c join string_assessment a on a.id = c.assessment_id where c.string_id = ?",
        "select * from jar_assessment where string_id = ? order by position",
        "select * from link_assessment where string_id = ? order by ordinal",
        "select * from next_date where string_id = ?"
    };

    private static final String OF_ESTATE = """
            select b.id, b.name, s.code, s.name, r.name, a.urgency, a.headline, n.due_on
            from battery_string b join site s on s.id = b.site_id join area r on r.id = s.area_id
            left join current_assessment c on c.string_id = b.id
            left join string_assessment a on a.id = c.assessment_id
            left join next_date n on n.string_id = b.id
            order by r.name, s.name, b.name""";

    private PageSql() {}

    static void string(JdbcTemplate jdbc, long stringId) {
        for (String sql : OF_STRING) {
            jdbc.query(sql, row -> {}, stringId);
        }
    }

    static void estate(JdbcTemplate jdbc) {
        jdbc.query(OF_ESTATE, row -> {});
        jdbc.query("select * from survey order by id desc limit 10", row -> {});
        jdbc.query("select * from upload where state = 'HELD' order by received_at desc limit 20", row -> {});
    }
}
