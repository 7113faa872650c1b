package org.ohmstead.worklist;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What was done.
 *
 * @param by who did it
 * @param asFoundMicroohms of a link before it was opened; null where it was not read, and for anything else
 * @param asLeftMicroohms of the link as it was left
 */
public record WorkReport(
        LocalDate on,
        String by,
        String note,
        @Nullable Double asFoundMicroohms,
        @Nullable Double asLeftMicroohms) {

    public static WorkReport of(LocalDate on, String by, String note) {
        return new WorkReport(on, by, note, null, null);
    }
}
