package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.RulePack;

/**
 * What is asked of a string and how that stands, as of a day of the site's calendar.
 *
 * @param pack in force on that day; null when the string was under none
 * @param duties one per requirement of the pack
 */
public record StringDuties(
        long stringId, LocalDate asOf, @Nullable RulePack pack, List<Duty> duties) {

    public StringDuties {
        duties = List.copyOf(duties);
    }
}
