package org.ohmstead.overview;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.kernel.Urgency;
import org.springframework.stereotype.Component;

/** Makes the tiles of the wall, of each string in service within reach. */
@Component
class Tiles {

    private final TileTable table;
    private final Overruling overruling;
    private final Access access;
    private final Clock clock;

    Tiles(TileTable table, Overruling overruling, Access access, Clock clock) {
        this.table = table;
        this.overruling = overruling;
        this.access = access;
        this.clock = clock;
    }

    /** A tile and where it hangs. */
    record Placed(StringTile tile, String areaName, int jars) {}

    List<Placed> placed() {
        Instant now = clock.instant();
        Map<Long, Asked> overruled = overruling.asked();
        return table.rows(access.reach(), null).stream()
                .map(row -> new Placed(
                        heard(tile(row, now), overruled.get(row.stringId())), row.areaName(), row.positions()))
                .toList();
    }

    List<StringTile> all() {
        return placed().stream().map(Placed::tile).toList();
    }

    List<StringTile> at(String siteCode) {
        Instant now = clock.instant();
        Map<Long, Asked> overruled = overruling.asked();
        return table.rows(access.reach(), siteCode).stream()
                .map(row -> heard(tile(row, now), overruled.get(row.stringId())))
                .toList();
    }

    TileTable.Places places() {
        return table.places(access.reach());
    }

    private static StringTile tile(TileTable.Row row, Instant now) {
        LocalDate due = row.dueOn();
        return new StringTile(
                row.stringId(),
                row.siteCode(),
                row.siteName(),
                row.name(),
                row.technology(),
                row.urgency(),
                headline(row.urgency(), row.headline()),
                due,
                due == null ? null : (int) ChronoUnit.DAYS.between(LocalDate.ofInstant(now, row.timeZone()), due),
                row.dueReason() == null ? "" : row.dueReason());
    }

    private static StringTile heard(StringTile tile, @Nullable Asked asked) {
        return asked == null || tile.urgency() == null
                ? tile
                : new StringTile(
                        tile.stringId(),
                        tile.siteCode(),
                        tile.siteName(),
                        tile.name(),
                        tile.technology(),
                        asked.urgency(),
                        asked.headline(tile.urgency(), tile.headline()),
                        tile.dueOn(),
                        tile.daysToDue(),
                        tile.dueReason());
    }

    /** The urgency's word stands beside it already. */
    private static String headline(@Nullable Urgency urgency, @Nullable String told) {
        if (urgency == null || told == null) {
            return "Not assessed yet.";
        }
        String prefix = urgency.word() + ": ";
        return told.startsWith(prefix) ? Words.capital(told.substring(prefix.length())) : told;
    }
}
