package org.ohmstead.fleet;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.StringEntry;

/** A string of the register; its duty and settings stand in the entry. */
public record StringView(
        long id,
        int version,
        long siteId,
        long areaId,
        long jarTypeId,
        @JsonUnwrapped StringEntry entry) {

    public String siteCode() {
        return entry.site();
    }

    public String name() {
        return entry.name();
    }

    /** "FEL-03 / A": how people and files call it. */
    public String title() {
        return entry.site() + " / " + entry.name();
    }

    public String jarTypeCode() {
        return entry.jarType();
    }

    /** Number of jars. */
    @JsonProperty
    public int positions() {
        return entry.positions();
    }

    /** Jars per tier in the order of the positions. */
    public List<Integer> tiers() {
        return entry.tiers();
    }

    public LocalDate inServiceOn() {
        return entry.inServiceOn();
    }

    public @Nullable LocalDate retiredOn() {
        return entry.retiredOn();
    }
}
