package org.ohmstead.fleet.csv;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the register says of an area; known by its code. */
public record AreaEntry(String code, String name, @Nullable LocalDate retiredOn) {}
