package org.ohmstead.fleet.csv;

import java.util.List;
import java.util.Optional;

/** The seven files of the register. */
public final class Sheets {

    public static final Sheet<AreaEntry> AREAS = AreaSheet.SHEET;
    public static final Sheet<SiteEntry> SITES = SiteSheet.SHEET;
    public static final Sheet<JarTypeEntry> JAR_TYPES = JarTypeSheet.SHEET;
    public static final Sheet<StringEntry> STRINGS = StringSheet.SHEET;
    public static final Sheet<LinkEntry> LINKS = LinkSheet.SHEET;
    public static final Sheet<OccupancyEntry> OCCUPANCIES = OccupancySheet.SHEET;
    public static final Sheet<RemakeEntry> REMAKES = RemakeSheet.SHEET;

    /** In the order in which they must be brought in: each names only what stands in the ones before. */
    public static final List<Sheet<?>> ALL = List.of(AREAS, SITES, JAR_TYPES, STRINGS, LINKS, OCCUPANCIES, REMAKES);

    private Sheets() {}

    public static Optional<Sheet<?>> named(String name) {
        return ALL.stream().filter(sheet -> sheet.name().equals(name)).findFirst();
    }
}
