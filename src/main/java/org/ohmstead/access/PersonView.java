package org.ohmstead.access;

import java.util.Set;

/**
 * An account as administrators see it.
 *
 * @param hasPassword false until the person has chosen one through a one-time link
 */
public record PersonView(
        long id,
        String username,
        String displayName,
        Role role,
        boolean reachesAll,
        Set<Long> areaIds,
        boolean enabled,
        boolean hasPassword) {}
