package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmstead.programme.rules.EvidenceKind;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored visits. */
@Component
class VisitTable {

    private static final String INSERT = """
            insert into visit (string_id, visited_on, visited_by, note, recorded_at, recorded_by)
            values (?, ?, ?, ?, ?, ?) returning id""";
    private static final String INSERT_ITEM =
            "insert into visit_item (visit_id, item, outcome, value, note) values (?, ?, ?, ?, ?)";
    private static final String SELECT = """
            select v.*, x.reason as voided_because
            from visit v left join visit_void x on x.visit_id = v.id
            """;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;
    private final Clock clock;

    VisitTable(JdbcClient jdbc, JdbcTemplate batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    long insert(NewVisit visit, String by) {
        long id = insertHead(visit, by);
        batches.batchUpdate(INSERT_ITEM, items(id, visit));
        return id;
    }

    void insertAll(List<NewVisit> visits, String by) {
        List<Object[]> items = new ArrayList<>();
        for (NewVisit visit : visits) {
            items.addAll(items(insertHead(visit, by), visit));
        }
        batches.batchUpdate(INSERT_ITEM, items);
    }

    private long insertHead(NewVisit visit, String by) {
        return jdbc.sql(INSERT)
                .params(
                        visit.stringId(),
                        visit.visitedOn(),
                        visit.visitedBy(),
                        visit.note(),
                        Timestamp.from(clock.instant()),
                        by)
                .query(Long.class)
                .single();
    }

    private static List<Object[]> items(long visitId, NewVisit visit) {
        List<Object[]> rows = new ArrayList<>();
        for (NewVisit.Item item : visit.items()) {
            rows.add(new Object[] {visitId, item.item().name(), item.outcome().name(), item.value(), item.note()});
        }
        return rows;
    }

    void voidVisit(long visitId, String reason, String by) {
        jdbc.sql("insert into visit_void (visit_id, reason, at, by) values (?, ?, ?, ?)")
                .params(visitId, reason, Timestamp.from(clock.instant()), by)
                .update();
    }

    List<VisitView> of(long stringId) {
        Map<Long, List<NewVisit.Item>> itemsOf = items("v.string_id = ?", stringId);
        return jdbc.sql(SELECT + "where v.string_id = ? order by v.visited_on desc, v.id desc")
                .param(stringId)
                .query((row, n) -> view(row, itemsOf))
                .list();
    }

    Optional<VisitView> find(long visitId) {
        Map<Long, List<NewVisit.Item>> items = items("v.id = ?", visitId);
        return jdbc.sql(SELECT + "where v.id = ?")
                .param(visitId)
                .query((row, n) -> view(row, items))
                .optional();
    }

    private static VisitView view(ResultSet row, Map<Long, List<NewVisit.Item>> items) throws SQLException {
        long id = row.getLong("id");
        return new VisitView(
                id,
                row.getLong("string_id"),
                row.getObject("visited_on", LocalDate.class),
                row.getString("visited_by"),
                row.getString("note"),
                row.getTimestamp("recorded_at").toInstant(),
                row.getString("recorded_by"),
                row.getString("voided_because"),
                items.getOrDefault(id, List.of()));
    }

    private record Row(long visitId, NewVisit.Item item) {}

    /** In the order of the checklist. */
    private Map<Long, List<NewVisit.Item>> items(String where, long key) {
        return jdbc
                .sql("select i.* from visit_item i join visit v on v.id = i.visit_id where " + where)
                .param(key)
                .query((row, n) -> new Row(row.getLong("visit_id"), item(row)))
                .list()
                .stream()
                .sorted(Comparator.comparing(row -> row.item().item()))
                .collect(Collectors.groupingBy(Row::visitId, Collectors.mapping(Row::item, Collectors.toList())));
    }

    private static NewVisit.Item item(ResultSet row) throws SQLException {
        return new NewVisit.Item(
                EvidenceKind.valueOf(row.getString("item")),
                NewVisit.Outcome.valueOf(row.getString("outcome")),
                row.getObject("value", Double.class),
                row.getString("note"));
    }
}
