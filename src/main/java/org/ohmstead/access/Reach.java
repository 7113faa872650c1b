package org.ohmstead.access;

import java.util.Set;

/**
 * The areas a person may see and work in. In SQL: {@code :everywhere or area_id = any (:areaIds)}.
 *
 * @param everywhere all areas, also those created later; {@code areaIds} is then empty
 */
public record Reach(boolean everywhere, Set<Long> areaIds) {

    public static final Reach EVERYWHERE = new Reach(true, Set.of());

    public Reach {
        areaIds = Set.copyOf(areaIds);
    }

    public boolean covers(long areaId) {
        return everywhere || areaIds.contains(areaId);
    }

    /** For binding to an SQL array parameter. */
    public Long[] areaIdArray() {
        return areaIds.toArray(Long[]::new);
    }
}
