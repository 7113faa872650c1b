package org.ohmstead.fleet.web;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.RemakeEntry;

/** A remake of a link, as a program states it. */
record RemakeBody(
        int ordinal,
        LocalDate remadeOn,
        @Nullable Double asFoundMicroohms,
        @Nullable Double asLeftMicroohms,
        @Nullable String note) {

    RemakeEntry in(StringView string) {
        return new RemakeEntry(
                string.siteCode(),
                string.name(),
                ordinal,
                remadeOn,
                asFoundMicroohms,
                asLeftMicroohms,
                note == null ? "" : note);
    }
}
