package org.ohmstead.reports;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;

/**
 * Which report is wanted, of what.
 *
 * @param area code; null for everything in reach
 * @param subject id of the string or survey; null for reports of the estate
 * @param quarter null for reports without one, and for the last finished one
 */
public record ReportWish(
        ReportKind kind,
        @Nullable String area,
        @Nullable Long subject,
        @Nullable String quarter) {

    public static ReportWish ofEstate(ReportKind kind, @Nullable String area) {
        return new ReportWish(kind, area, null, null);
    }

    long requireSubject() {
        if (subject == null) {
            throw new Refused("Say of which " + kind.scope().name().toLowerCase(java.util.Locale.ROOT)
                    + " the report is to be: " + "?id=...");
        }
        return subject;
    }
}
