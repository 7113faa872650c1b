package org.ohmstead.programme.rounds;

import java.time.LocalDate;
import java.util.Collections;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The days on which rounds that stand already do one thing, and what is left of it to be planned.
 *
 * <p>A window is done by the first standing day that is still in time, or late anyway; what it opens after that is looked
 * at in the same way, and so is what a newly planned visit opens. A standing day after the due day helps nothing: then a
 * visit in time is still to be planned.
 */
public final class Standing {

    private final NavigableSet<LocalDate> days;

    private Standing(NavigableSet<LocalDate> days) {
        this.days = days;
    }

    /** @param today standing days before it have passed and did nothing */
    public static Standing of(NavigableSet<LocalDate> days, LocalDate today) {
        return new Standing(Collections.unmodifiableNavigableSet(new TreeSet<>(days.tailSet(today, true))));
    }

    /**
     * What is still to be planned of the window and of all that follows it; null when nothing is.
     *
     * @param today what was due before it is late whatever is planned
     */
    public @Nullable Window left(Window window, LocalDate today) {
        return left(window, LocalDate.MIN, today);
    }

    private @Nullable Window left(@Nullable Window window, LocalDate after, LocalDate today) {
        Window left = window;
        LocalDate day = days.higher(after);
        while (left != null && day != null && doneBy(left, day, today)) {
            left = left.after(day);
            day = days.higher(day);
        }
        return left == null || left.repeat() == null ? left : minding(left, today);
    }

    private static boolean doneBy(Window window, LocalDate day, LocalDate today) {
        return !day.isAfter(window.due()) || window.due().isBefore(today);
    }

    private Window minding(Window window, LocalDate today) {
        return new Window(
                window.site(),
                window.crew(),
                window.key(),
                window.opens(),
                window.due(),
                done -> left(window.after(done), done, today));
    }
}
