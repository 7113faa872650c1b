package org.ohmstead.reports;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A report that somebody gets by e-mail.
 *
 * @param area code; null for everything in the person's reach on the day it is sent
 * @param sentFor first day of the period it last went out in; null while it never did
 */
public record Subscription(
        long id,
        String username,
        String email,
        ReportKind kind,
        ReportForm form,
        @Nullable String area,
        Rhythm rhythm,
        @Nullable LocalDate sentFor) {

    ReportWish wish() {
        return ReportWish.ofEstate(kind, area);
    }
}
