package org.ohmstead.overview;

import java.util.List;
import org.ohmstead.kernel.Urgency;

/** Counts the strings of an estate by what they ask. */
final class EstateCounts {

    private EstateCounts() {}

    static EstateView.Counts of(List<StringTile> tiles, int areas, int sites, long jars) {
        return new EstateView.Counts(
                areas,
                sites,
                tiles.size(),
                jars,
                Wall.count(tiles, Urgency.ACT),
                Wall.count(tiles, Urgency.PLAN),
                Wall.count(tiles, Urgency.RECHECK),
                tiles.stream().filter(StringTile::overdue).count(),
                tiles.stream().filter(EstateFilter.SOON::shows).count());
    }
}
