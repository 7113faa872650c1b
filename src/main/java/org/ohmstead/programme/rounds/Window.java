package org.ohmstead.programme.rounds;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Something to be done once at a site between two days, both included.
 *
 * @param site where
 * @param crew who goes to that site
 * @param key what, unique at the site
 * @param opens the first sensible day
 * @param due the last day in time; in the past when it is overdue
 * @param repeat what is to be done next once this was done; null when nothing is
 */
public record Window(
        String site,
        String crew,
        String key,
        LocalDate opens,
        LocalDate due,
        @Nullable Repeat repeat) {

    /** The window that a completion opens. */
    public interface Repeat {

        @Nullable
        Window after(LocalDate done);
    }

    public Window {
        if (opens.isAfter(due)) {
            throw new IllegalArgumentException(key + " opens on " + opens + ", after it is due on " + due);
        }
    }

    public static Window once(String site, String crew, String key, LocalDate opens, LocalDate due) {
        return new Window(site, crew, key, opens, due, null);
    }

    boolean isOpen(LocalDate day) {
        return !opens.isAfter(day);
    }

    @Nullable
    Window after(LocalDate done) {
        return repeat == null ? null : repeat.after(done);
    }
}
