package org.ohmstead.capacity;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/** What the surveys up to a day asked of each jar, knowing nothing later. Told by whoever judges strings. */
public interface OhmicBefore {

    /**
     * What was asked of a jar.
     *
     * @param changeOnBaseline 0.41 is 41 % up; null where there is nothing to compare with
     */
    record Asked(Urgency urgency, @Nullable Double changeOnBaseline, LocalDate readOn) {}

    /** By position; jars never read by then are left out. */
    Map<Integer, Asked> asOf(long stringId, LocalDate day);
}
