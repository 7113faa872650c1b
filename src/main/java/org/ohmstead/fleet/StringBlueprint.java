package org.ohmstead.fleet;

import java.util.List;

/**
 * A string with everything the register knows of it.
 *
 * @param links the N + 1 links by ordinal
 * @param occupancies by position, then oldest first
 * @param remakes by link, then oldest first
 */
public record StringBlueprint(
        StringView string,
        SiteView site,
        JarTypeView jarType,
        List<LinkView> links,
        List<OccupancyView> occupancies,
        List<RemakeView> remakes) {}
