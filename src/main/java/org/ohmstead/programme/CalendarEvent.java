package org.ohmstead.programme;

import java.time.Instant;
import java.time.LocalDate;

/**
 * An entry of a calendar that lasts a whole day.
 *
 * @param uid the same for as long as the entry means the same thing
 * @param sequence grows whenever its day changes
 * @param changedAt when it last did
 */
record CalendarEvent(
        String uid,
        LocalDate on,
        String summary,
        String description,
        String location,
        int sequence,
        Instant changedAt,
        boolean cancelled) {}
