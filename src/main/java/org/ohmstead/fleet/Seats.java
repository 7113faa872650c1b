package org.ohmstead.fleet;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.Occupancies.Placing;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.DateRange;
import org.springframework.stereotype.Component;

/** Says in words why a jar can't sit where somebody wants it. */
@Component
class Seats {

    private final Occupancies occupancies;
    private final BatteryStrings strings;

    Seats(Occupancies occupancies, BatteryStrings strings) {
        this.occupancies = occupancies;
        this.strings = strings;
    }

    void requireInPlan(StringView string, OccupancyEntry entry) {
        if (entry.position() > string.positions()) {
            throw Sound.refusal(
                    Sheets.OCCUPANCIES,
                    "position",
                    String.valueOf(entry.position()),
                    string.title() + " has no such position.",
                    "Its positions are 1 to " + string.positions() + ".");
        }
    }

    /** @param but this occupancy is the one being changed; 0 for none */
    void requireFree(Placing placing, long but) {
        OccupancyEntry entry = placing.entry();
        DateRange during = new DateRange(entry.from(), entry.until());
        occupancies.at(placing.stringId(), entry.position(), during).stream()
                .filter(other -> other.id() != but)
                .findFirst()
                .ifPresent(other -> {
                    throw new Conflict("Position " + entry.position() + " of " + entry.site() + " / " + entry.string()
                            + " holds " + other.jar() + " " + words(other.during())
                            + ". Replace it, or end its stay first.");
                });
        if (entry.serial() != null) {
            requireNowhereElse(placing.jarTypeId(), entry.serial(), during, but);
        }
    }

    private void requireNowhereElse(long jarTypeId, String serial, DateRange during, long but) {
        occupancies.ofSerial(jarTypeId, serial, during).stream()
                .filter(other -> other.id() != but)
                .findFirst()
                .ifPresent(other -> {
                    throw new Conflict("Jar " + serial + " sits at position " + other.position() + " of "
                            + title(other) + " " + words(other.during())
                            + ". Mend the serial, or remove the jar there first.");
                });
    }

    /** @throws Conflict when nobody sits there on that day, or only arrived that day */
    OccupancyView sitting(StringView string, int position, LocalDate on) {
        OccupancyView sitting = occupancies.at(string.id(), position, new DateRange(on, on.plusDays(1))).stream()
                .findFirst()
                .orElseThrow(() -> new Conflict(
                        "No jar sits at position " + position + " of " + string.title() + " on " + on + "."));
        if (sitting.during().from().equals(on)) {
            throw new Conflict("The jar at position " + position + " came on that very day, " + on
                    + ". Correct its record instead.");
        }
        return sitting;
    }

    /** The jar that left the same position on the day the other one came. */
    Optional<OccupancyView> leftOn(OccupancyView successor) {
        LocalDate day = successor.during().from();
        return occupancies.at(successor.stringId(), successor.position(), new DateRange(day.minusDays(1), day)).stream()
                .filter(before -> day.equals(before.during().until()))
                .findFirst();
    }

    /** As it is on record. */
    OccupancyEntry entry(StringView string, OccupancyView jar) {
        return entry(string, jar, jar.during().until(), jar.leftReason());
    }

    /** As on record, but leaving on that day for that reason. */
    OccupancyEntry entry(StringView string, OccupancyView jar, @Nullable LocalDate until, String leftReason) {
        return new OccupancyEntry(
                string.siteCode(),
                string.name(),
                jar.position(),
                jar.jarTypeCode(),
                jar.serial(),
                jar.during().from(),
                until,
                jar.reason(),
                leftReason,
                jar.baselineOhmic(),
                jar.baselineSource());
    }

    static String words(DateRange during) {
        LocalDate until = during.until();
        return until == null ? "since " + during.from() : "from " + during.from() + " until " + until;
    }

    private String title(OccupancyView jar) {
        return strings.withSite(jar.stringId())
                .map(string -> string.view().title())
                .orElse("another string");
    }
}
