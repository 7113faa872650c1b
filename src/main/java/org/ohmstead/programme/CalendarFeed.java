package org.ohmstead.programme;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.ohmstead.access.Access;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The calendar of whoever asks: every string's next date, and the planned rounds. */
@Service
@Transactional(readOnly = true)
public class CalendarFeed {

    private static final int DAYS_BACK = 60;
    private static final int DAYS_AHEAD = 800;

    private static final String DATES = """
            select d.*, b.name, s.code as site_code, s.name as site_name
            from next_date d join battery_string b on b.id = d.string_id join site s on s.id = b.site_id
            where :everywhere or s.area_id = any (:areaIds) order by d.due_on, d.string_id""";

    private final JdbcClient jdbc;
    private final RoundTable rounds;
    private final Access access;
    private final Clock clock;

    CalendarFeed(JdbcClient jdbc, RoundTable rounds, Access access, Clock clock) {
        this.jdbc = jdbc;
        this.rounds = rounds;
        this.access = access;
        this.clock = clock;
    }

    /** As RFC 5545 wants it. */
    public String text() {
        access.require(SEE_ESTATE);
        Instant now = clock.instant();
        LocalDate today = LocalDate.ofInstant(now, java.time.ZoneOffset.UTC);
        List<CalendarEvent> events = new ArrayList<>(jdbc.sql(DATES)
                .param("everywhere", access.reach().everywhere())
                .param("areaIds", access.reach().areaIdArray())
                .query((row, n) -> nextDate(row))
                .list());
        rounds.between(today.minusDays(DAYS_BACK), today.plusDays(DAYS_AHEAD), access.reach())
                .forEach(round -> events.add(round(round)));
        return CalendarText.of("Ohmstead: due dates", events, now);
    }

    private static CalendarEvent nextDate(ResultSet row) throws SQLException {
        return new CalendarEvent(
                "next-visit-of-string-" + row.getLong("string_id") + "@ohmstead",
                row.getObject("due_on", LocalDate.class),
                "Due: " + row.getString("site_code") + " / " + row.getString("name"),
                row.getString("reason"),
                row.getString("site_name"),
                row.getInt("sequence"),
                Objects.requireNonNullElse(row.getTimestamp("moved_at"), new java.sql.Timestamp(0))
                        .toInstant(),
                false);
    }

    private static CalendarEvent round(RoundView round) {
        String strings =
                round.tasks().stream().map(RoundTask::stringName).distinct().collect(Collectors.joining(", "));
        return new CalendarEvent(
                "round-" + round.id() + "@ohmstead",
                round.plannedOn(),
                "Round: " + round.siteName() + (round.crew().isEmpty() ? "" : ", " + round.crew()),
                "Strings " + strings + ": " + round.tasks().size() + " duties.",
                round.siteName(),
                round.sequence(),
                round.changedAt(),
                round.cancelledBecause() != null);
    }
}
