package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import org.ohmstead.kernel.DateRange;

/** Who sits where now, and which jars came together: a lot is what started within half a year of one another. */
final class Seats {

    private final JarSpell[] spells;
    private final LocalDate[] lotStarts;
    private final int[] lots;
    private final long lotDays;

    private Seats(JarSpell[] spells, long lotDays) {
        this.spells = spells;
        this.lotDays = lotDays;
        this.lots = new int[spells.length];
        Map<LocalDate, Integer> starts = new HashMap<>();
        LocalDate[] seen = new LocalDate[spells.length];
        for (int i = 0; i < spells.length; i++) {
            LocalDate start = spells[i].during().from();
            lots[i] = starts.computeIfAbsent(start, day -> starts.size());
            seen[lots[i]] = start;
        }
        this.lotStarts = seen;
    }

    /** The latest spell at each position; a jar of which nothing was recorded sits there since the string began. */
    static Seats of(StringHistory history, Limits limits) {
        JarSpell[] spells = new JarSpell[history.plan().positions()];
        for (int i = 0; i < spells.length; i++) {
            spells[i] = new JarSpell(
                    i + 1, null, DateRange.startingOn(history.plan().inServiceOn()), Double.NaN);
        }
        history.spells().stream()
                .filter(spell -> spell.position() >= 1 && spell.position() <= spells.length)
                .sorted(Comparator.comparing(spell -> spell.during().from()))
                .forEach(spell -> spells[spell.position() - 1] = spell);
        return new Seats(spells, limits.countOf(Limit.LOT_DAYS));
    }

    JarSpell at(int position) {
        return spells[position - 1];
    }

    int lotOf(int position) {
        return lots[position - 1];
    }

    /** Whether the jar came within half a year of that lot's day. */
    boolean isOfLot(int position, int lot) {
        long apart = at(position).during().from().toEpochDay() - lotStarts[lot].toEpochDay();
        return Math.abs(apart) <= lotDays;
    }
}
