package org.ohmstead.fleet;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.AreaEntry;

/** An area of the register. */
public record AreaView(long id, int version, @JsonUnwrapped AreaEntry entry) {

    public String code() {
        return entry.code();
    }

    public String name() {
        return entry.name();
    }

    public @Nullable LocalDate retiredOn() {
        return entry.retiredOn();
    }
}
