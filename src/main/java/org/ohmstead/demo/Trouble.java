package org.ohmstead.demo;

/**
 * What goes wrong with one jar or link, by the time left until today.
 *
 * @param place position of the jar or ordinal of the link
 */
record Trouble(int place, Course ohmic, Course volts) {

    /** A value by years before today: a factor for ohmic values, an addition for volts. */
    @FunctionalInterface
    interface Course {
        double at(double yearsAgo);
    }

    private static final Course NO_VOLTS = yearsAgo -> 0;

    /** Loses water: slow at first, then ever faster; volts drift up a little. */
    static Trouble dryOut(int position, double rise) {
        return new Trouble(
                position,
                yearsAgo -> 1 + rise * Math.pow(progress(yearsAgo, 3.5), 2.2),
                yearsAgo -> 0.012 * progress(yearsAgo, 3.5));
    }

    /** Plates corrode: a steady rise. */
    static Trouble corrosion(int position, double rise) {
        return new Trouble(position, yearsAgo -> 1 + rise * progress(yearsAgo, 6), NO_VOLTS);
    }

    /** One cell shorts within the last half year: ohmic value and volts fall together. */
    static Trouble shortedCell(int position, double fall, double voltsLost) {
        return new Trouble(
                position, yearsAgo -> yearsAgo < 0.6 ? 1 - fall : 1, yearsAgo -> yearsAgo < 0.6 ? -voltsLost : 0);
    }

    /** A bolt works loose: a little a year ago, plainly now. */
    static Trouble loosened(int ordinal, double rise) {
        return new Trouble(
                ordinal, yearsAgo -> yearsAgo < 0.9 ? 1 + rise : yearsAgo < 1.6 ? 1 + rise / 4 : 1, NO_VOLTS);
    }

    /** Rises until it is remade, and is better than new after. */
    static Trouble remade(int ordinal, double rise, double yearsAgoRemade) {
        return new Trouble(
                ordinal,
                yearsAgo -> yearsAgo <= yearsAgoRemade ? 0.96 : 1 + rise * progress(yearsAgo - yearsAgoRemade, 3),
                NO_VOLTS);
    }

    /** Was never made well. */
    static Trouble poorFromTheStart(int ordinal, double excess) {
        return new Trouble(ordinal, yearsAgo -> 1 + excess, NO_VOLTS);
    }

    /** 0 before it began, 1 at its end. */
    private static double progress(double yearsToEnd, double years) {
        return Math.max(0, Math.min(1, (years - yearsToEnd) / years));
    }
}
