package org.ohmstead.overview;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/**
 * One string on the wall.
 *
 * @param urgency null while nobody has assessed it
 * @param daysToDue from the site's today; negative once the date has passed
 */
public record StringTile(
        long stringId,
        String siteCode,
        String siteName,
        String name,
        Technology technology,
        @Nullable Urgency urgency,
        String headline,
        @Nullable LocalDate dueOn,
        @Nullable Integer daysToDue,
        String dueReason) {

    public boolean asks() {
        return urgency != null && urgency != Urgency.CLEAR;
    }

    public boolean overdue() {
        return daysToDue != null && daysToDue < 0;
    }

    /** For the disc: a string without judgement asks nothing yet. */
    public Urgency disc() {
        return urgency == null ? Urgency.CLEAR : urgency;
    }

    /** "Harrow Fell B: Act, due in 3 days". */
    public String words() {
        String judged = urgency == null ? "not assessed yet" : urgency.word();
        return siteName + " " + name + ": " + judged + (daysToDue == null ? "" : ", due " + Figures.away(daysToDue));
    }
}
