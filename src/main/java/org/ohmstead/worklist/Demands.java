package org.ohmstead.worklist;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.programme.DemandedReadings;
import org.ohmstead.programme.rules.NextDates.Demand;
import org.ohmstead.worklist.model.Step;
import org.ohmstead.worklist.model.WorkItem;
import org.ohmstead.worklist.model.WorkKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Tells the programme which readings work demands. What a judgement asks to be read again it knows by itself; here are those
 * that remarks and persons ask for.
 */
@Component
class Demands {

    private static final int LONGEST_WORDS = 240;

    private final JdbcClient jdbc;
    private final DemandedReadings readings;

    Demands(JdbcClient jdbc, DemandedReadings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    /** After those steps were stored. */
    void settle(Map<Long, List<Step>> steps) {
        settle(steps.entrySet().stream()
                .filter(string -> string.getValue().stream().anyMatch(step -> isReading(step.after())))
                .map(Map.Entry::getKey)
                .toList());
    }

    static boolean isReading(WorkItem item) {
        return item.key().kind() == WorkKind.MEASURE_AGAIN;
    }

    void settle(Collection<Long> stringIds) {
        if (stringIds.isEmpty()) {
            return;
        }
        Map<Long, Demand> found = new HashMap<>();
        jdbc.sql("""
                        select distinct on (string_id) string_id, by_on, reason from work_item
                        where string_id = any (?) and kind = 'MEASURE_AGAIN' and source in ('REMARK', 'PERSON')
                          and state in ('RAISED', 'PLANNED', 'DONE') and by_on is not null
                        order by string_id, by_on, id""").param(stringIds.toArray(Long[]::new)).query(row -> {
            found.put(
                    row.getLong("string_id"),
                    new Demand(row.getObject("by_on", LocalDate.class), words(row.getString("reason"))));
        });
        readings.settle(stringIds, found);
    }

    private static String words(String reason) {
        String first = reason.length() > LONGEST_WORDS ? reason.substring(0, LONGEST_WORDS - 1) + "…" : reason;
        return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
    }
}
