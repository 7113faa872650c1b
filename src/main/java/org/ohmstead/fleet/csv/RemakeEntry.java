package org.ohmstead.fleet.csv;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A link opened, cleaned and made again; known by its string, ordinal and day. */
public record RemakeEntry(
        String site,
        String string,
        int ordinal,
        LocalDate remadeOn,
        @Nullable Double asFoundMicroohms,
        @Nullable Double asLeftMicroohms,
        String note) {}
