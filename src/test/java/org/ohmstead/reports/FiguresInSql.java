package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmstead.programme.rules.DutyState;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The query of {@code docs/reports.md}, taken from that page, and its answer beside a summary of the same quarter. */
final class FiguresInSql {

    private static final String QUARTER = "select date '2026-07-01' as first_day, date '2026-09-30' as last_day";

    private static final String AREA = "null::text as only_area";

    private final List<Map<String, Object>> rows;

    private FiguresInSql(List<Map<String, Object>> rows) {
        this.rows = rows;
    }

    static FiguresInSql of(JdbcClient jdbc, Quarter quarter, String area) {
        return new FiguresInSql(jdbc.sql(query(quarter, area)).query().listOfRows());
    }

    private static String query(Quarter quarter, String area) {
        try {
            String page = Files.readString(Path.of("docs/reports.md"));
            String query = page.substring(page.indexOf("```sql\n") + 7, page.indexOf("```\n\n## Files"));
            assertThat(query).contains(QUARTER).contains(AREA);
            return query.replace(
                            QUARTER,
                            "select date '%s' as first_day, date '%s' as last_day"
                                    .formatted(quarter.first(), quarter.last()))
                    .replace(AREA, area == null ? AREA : "'" + area + "' as only_area");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    int size() {
        return rows.size();
    }

    void agreeWith(ComplianceSummary summary) {
        assertThat(rows.stream().map(FiguresInSql::line).toList())
                .as("lines of " + summary.quarter())
                .containsExactlyInAnyOrderElementsOf(
                        summary.lines().stream().map(FiguresInSql::line).toList());
        Map<List<Object>, Long> cells = new HashMap<>();
        Map<Object, Long> states = new HashMap<>();
        for (Map<String, Object> row : rows) {
            cells.put(List.of(row.get("area"), row.get("pack"), row.get("requirement"), row.get("state")), (Long)
                    row.get("counted_in_total"));
            states.put(row.get("state"), (Long) row.get("counted_in_state"));
        }
        assertThat(cells).as("totals of " + summary.quarter()).isEqualTo(cells(summary));
        for (DutyState state : DutyState.values()) {
            assertThat(states.getOrDefault(state.words(), 0L)).as(state.words()).isEqualTo(summary.count(state));
        }
    }

    private static Map<List<Object>, Long> cells(ComplianceSummary summary) {
        Map<List<Object>, Long> cells = new HashMap<>();
        summary.totals()
                .forEach(total -> total.counts()
                        .forEach((state, count) -> cells.put(
                                List.of(total.area(), total.pack(), total.requirement(), state.words()), count)));
        return cells;
    }

    private static String line(Map<String, Object> row) {
        return Stream.of(
                        "area",
                        "site",
                        "string",
                        "pack",
                        "requirement",
                        "last_done_on",
                        "due_on",
                        "own_due_on",
                        "done_on",
                        "state",
                        "own_state",
                        "evidence")
                .map(column -> Objects.toString(row.get(column), "–"))
                .collect(Collectors.joining(" | "));
    }

    private static String line(ComplianceLine line) {
        List<Object> values = new ArrayList<>(java.util.Arrays.asList(
                line.area(),
                line.site(),
                line.string(),
                line.pack(),
                line.requirement(),
                line.lastDoneOn(),
                line.dueOn(),
                line.ownDueOn(),
                line.doneOn(),
                line.state().words(),
                line.ownState() == null ? null : line.ownState().words(),
                line.evidence()));
        return values.stream().map(value -> Objects.toString(value, "–")).collect(Collectors.joining(" | "));
    }
}
