package org.ohmstead.fleet;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.SiteEntry;

/** A site of the register; the rest of what is known of it stands in the entry. */
public record SiteView(
        long id,
        int version,
        long areaId,
        String areaName,
        @JsonUnwrapped SiteEntry entry) {

    public String code() {
        return entry.code();
    }

    public String name() {
        return entry.name();
    }

    public String areaCode() {
        return entry.area();
    }

    /** In which all dates of the site are written. */
    public ZoneId timeZone() {
        return entry.timeZone();
    }

    public @Nullable LocalDate retiredOn() {
        return entry.retiredOn();
    }
}
