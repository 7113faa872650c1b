package org.ohmstead.fleet.csv;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * What the register says of a site; known by its code.
 *
 * @param area code of the area whose crew looks after it
 * @param timeZone the zone in which the site's dates are written
 */
public record SiteEntry(
        String code,
        String name,
        String area,
        ZoneId timeZone,
        @Nullable Double latitudeDegrees,
        @Nullable Double longitudeDegrees,
        String loadKind,
        String accessNotes,
        String contacts,
        @Nullable LocalDate retiredOn) {}
