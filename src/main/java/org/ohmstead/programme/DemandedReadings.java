package org.ohmstead.programme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.ohmstead.programme.rules.NextDates.Demand;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The readings that work demands beside what the judgements ask: they can bring a string's next date forward, never back. */
@Component
public class DemandedReadings {

    private final JdbcClient jdbc;
    private final NextDateKeeping dates;

    DemandedReadings(JdbcClient jdbc, NextDateKeeping dates) {
        this.jdbc = jdbc;
        this.dates = dates;
    }

    /**
     * Puts what is demanded of these strings in place of what was, and moves their next dates in the same transaction.
     *
     * @param demands of those strings of which something is demanded
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void settle(Collection<Long> stringIds, Map<Long, Demand> demands) {
        List<Long> changed = new ArrayList<>(withdraw(stringIds, demands));
        demands.forEach((stringId, demand) -> changed.addAll(put(stringId, demand)));
        dates.recompute(changed);
    }

    private List<Long> withdraw(Collection<Long> stringIds, Map<Long, Demand> demands) {
        Long[] without =
                stringIds.stream().filter(id -> !demands.containsKey(id)).toArray(Long[]::new);
        return without.length == 0
                ? List.of()
                : jdbc.sql("delete from demanded_reading where string_id = any (?) returning string_id")
                        .params(Arrays.asList((Object) without))
                        .query(Long.class)
                        .list();
    }

    private List<Long> put(long stringId, Demand demand) {
        return jdbc.sql("""
                        insert into demanded_reading (string_id, by_on, reason) values (?, ?, ?)
                        on conflict (string_id) do update set by_on = excluded.by_on, reason = excluded.reason
                        where (demanded_reading.by_on, demanded_reading.reason)
                              is distinct from (excluded.by_on, excluded.reason)
                        returning string_id""")
                .params(stringId, demand.by(), demand.reason())
                .query(Long.class)
                .list();
    }
}
