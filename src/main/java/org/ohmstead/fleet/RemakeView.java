package org.ohmstead.fleet;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A link opened, cleaned and made again on a day of the site's calendar. */
public record RemakeView(
        long id,
        long stringId,
        int ordinal,
        LocalDate remadeOn,
        @Nullable Double asFoundMicroohms,
        @Nullable Double asLeftMicroohms,
        String note) {}
