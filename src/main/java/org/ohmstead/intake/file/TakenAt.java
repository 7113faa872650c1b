package org.ohmstead.intake.file;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * When the readings were taken, as the sheet says it: with an offset it is an instant, without one the site's own clock.
 */
public record TakenAt(LocalDateTime written, @Nullable ZoneOffset offset) {

    /**
     * The instant. A local time that occurs twice (clocks put back) is the first of the two; one that never occurs (clocks
     * put forward) is moved forward by the length of the gap.
     */
    public Instant instant(ZoneId siteZone) {
        return offset == null
                ? written.atZone(siteZone).toInstant()
                : written.atOffset(offset).toInstant();
    }

    /** The site's own calendar date at that instant. */
    public LocalDate date(ZoneId siteZone) {
        return LocalDate.ofInstant(instant(siteZone), siteZone);
    }

    /** Whether the site's clock shows this time exactly once; always so when the offset is given. */
    public boolean isPlain(ZoneId siteZone) {
        return offset != null || siteZone.getRules().getValidOffsets(written).size() == 1;
    }
}
