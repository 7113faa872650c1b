package org.ohmstead.intake;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.map.ColumnMap;

/**
 * The latest version of a saved column map.
 *
 * @param areaId null for every area
 * @param belongsTo crew or instrument, in words
 */
public record ColumnMapView(
        String name,
        int version,
        @Nullable Long areaId,
        String belongsTo,
        boolean retired,
        Instant savedAt,
        String savedBy,
        ColumnMap map) {}
