package org.ohmstead.overview;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ohmstead.kernel.Urgency;

/**
 * The strings of an estate by area and site. A wall of more than {@link #SHOWN_WHOLE} strings shows only those that need
 * someone or are overdue, and counts the rest: it stays readable, and small, at any size.
 */
public record Wall(boolean folded, List<AreaWall> areas) {

    static final int SHOWN_WHOLE = 500;
    private static final int MOST_PER_AREA = 120;

    /** @param hiddenStrings of the area that are not shown */
    public record AreaWall(String name, int siteCount, int stringCount, int hiddenStrings, List<SiteTiles> sites) {}

    public record SiteTiles(String code, String name, List<StringTile> strings) {}

    public Wall {
        areas = List.copyOf(areas);
    }

    /** @param tilesByArea area name to its strings */
    static Wall of(Map<String, List<StringTile>> tilesByArea) {
        boolean folded = tilesByArea.values().stream().mapToInt(List::size).sum() > SHOWN_WHOLE;
        List<AreaWall> areas = new ArrayList<>();
        new TreeMap<>(tilesByArea).forEach((name, tiles) -> areas.add(area(name, tiles, folded)));
        return new Wall(folded, areas);
    }

    private static AreaWall area(String name, List<StringTile> tiles, boolean folded) {
        List<StringTile> shown = folded ? asking(tiles) : tiles;
        int sites = (int) tiles.stream().map(StringTile::siteCode).distinct().count();
        return new AreaWall(name, sites, tiles.size(), tiles.size() - shown.size(), bySite(shown));
    }

    private static List<StringTile> asking(List<StringTile> tiles) {
        return tiles.stream()
                .filter(tile -> tile.asks() || tile.overdue())
                .sorted(FirstInLine.ORDER)
                .limit(MOST_PER_AREA)
                .toList();
    }

    private static List<SiteTiles> bySite(List<StringTile> tiles) {
        Map<String, List<StringTile>> bySite =
                tiles.stream().collect(Collectors.groupingBy(StringTile::siteName, TreeMap::new, Collectors.toList()));
        return bySite.entrySet().stream()
                .map(site -> new SiteTiles(site.getValue().get(0).siteCode(), site.getKey(), site.getValue()))
                .toList();
    }

    static long count(List<StringTile> tiles, Urgency urgency) {
        return tiles.stream().filter(tile -> tile.urgency() == urgency).count();
    }
}
