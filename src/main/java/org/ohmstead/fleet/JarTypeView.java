package org.ohmstead.fleet;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.kernel.Technology;

/** A jar type of the register; its ratings and reference values stand in the entry. */
public record JarTypeView(
        long id, int version, @JsonUnwrapped JarTypeEntry entry) {

    public String code() {
        return entry.code();
    }

    public String description() {
        return entry.description();
    }

    public Technology technology() {
        return entry.technology();
    }

    public @Nullable LocalDate retiredOn() {
        return entry.retiredOn();
    }
}
