package org.ohmstead.worklist;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.worklist.model.Seen;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What the work list must know of strings, in bulk. Whoever asks has seen to the reach. */
@Component
class WorkPlaces {

    /** @param today at the site */
    record Place(
            long stringId,
            long areaId,
            LocalDate today,
            @Nullable LocalDate retiredOn) {

        /** Set once that day has come. */
        @Nullable
        LocalDate outOfServiceSince() {
            return retiredOn != null && !retiredOn.isAfter(today) ? retiredOn : null;
        }
    }

    private final JdbcClient jdbc;
    private final Clock clock;

    WorkPlaces(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    Map<Long, Place> of(Collection<Long> stringIds) {
        Map<Long, Place> found = new HashMap<>();
        jdbc.sql("""
                        select b.id, s.area_id, s.time_zone, b.retired_on
                        from battery_string b join site s on s.id = b.site_id where b.id = any (?)""").param(stringIds.toArray(Long[]::new)).query(row -> {
            long id = row.getLong("id");
            LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.of(row.getString("time_zone")));
            LocalDate retired = row.getObject("retired_on", LocalDate.class);
            found.put(id, new Place(id, row.getLong("area_id"), today, retired));
        });
        return found;
    }

    /** The capacity tests that count, by day; oldest first. A service test shows no capacity. */
    Map<Long, List<Seen.Test>> tests(Collection<Long> stringIds) {
        Map<Long, List<Seen.Test>> found = new HashMap<>();
        jdbc.sql("""
                        select string_id, id, tested_on from standing_capacity_test
                        where string_id = any (?) and kind <> 'SERVICE' order by tested_on, id""").param(stringIds.toArray(Long[]::new)).query(row -> {
            found.computeIfAbsent(row.getLong("string_id"), id -> new ArrayList<>())
                    .add(new Seen.Test(row.getLong("id"), row.getObject("tested_on", LocalDate.class)));
        });
        return found;
    }

    /** Which of those are judged. */
    Set<Long> judged(Collection<Long> stringIds) {
        return Set.copyOf(jdbc.sql("select string_id from current_assessment where string_id = any (?)")
                .param(stringIds.toArray(Long[]::new))
                .query(Long.class)
                .list());
    }

    /** All of the estate that are judged, in order. */
    List<Long> judged() {
        return jdbc.sql("select string_id from current_assessment order by string_id")
                .query(Long.class)
                .list();
    }
}
