package org.ohmstead.overview;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** Who is first in line: what asks most, then what is due first. */
final class FirstInLine {

    static final Comparator<StringTile> ORDER = Comparator.comparing(StringTile::disc)
            .reversed()
            .thenComparing(FirstInLine::due)
            .thenComparing(StringTile::siteName)
            .thenComparing(StringTile::name);

    private FirstInLine() {}

    static List<StringTile> of(List<StringTile> tiles, int most) {
        return tiles.stream().filter(StringTile::asks).sorted(ORDER).limit(most).toList();
    }

    private static LocalDate due(StringTile tile) {
        return tile.dueOn() == null ? LocalDate.MAX : tile.dueOn();
    }
}
