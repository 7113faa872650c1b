package org.ohmstead.overview;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/** Which strings the wall shows. The words are part of its address. */
public enum EstateFilter {
    ALL("all", "All", tile -> true),
    ACT("act", "Act", tile -> tile.urgency() == Urgency.ACT),
    PLAN("plan", "Plan", tile -> tile.urgency() == Urgency.PLAN),
    RECHECK("recheck", "Recheck", tile -> tile.urgency() == Urgency.RECHECK),
    OVERDUE("overdue", "Overdue", StringTile::overdue),
    SOON("soon", "Due in 30 days", tile -> !tile.overdue() && tile.daysToDue() != null && tile.daysToDue() <= 30),
    VENTED("vented", "Vented", tile -> tile.technology() == Technology.VENTED_LEAD_ACID),
    SEALED("sealed", "AGM and gel", tile -> tile.technology().isValveRegulated()),
    NICKEL("nickel", "Ni-Cd", tile -> tile.technology() == Technology.NICKEL_CADMIUM);

    private final String code;
    private final String words;
    private final Predicate<StringTile> shows;

    EstateFilter(String code, String words, Predicate<StringTile> shows) {
        this.code = code;
        this.words = words;
        this.shows = shows;
    }

    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    public boolean shows(StringTile tile) {
        return shows.test(tile);
    }

    public static Optional<EstateFilter> of(@Nullable String code) {
        return code == null
                ? Optional.of(ALL)
                : Arrays.stream(values())
                        .filter(filter -> filter.code.equals(code))
                        .findFirst();
    }
}
