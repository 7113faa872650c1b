package org.ohmstead.testbed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Strings that one crew reads on the same days with the same instrument. */
record Depot(List<Visit> visits) {
    static final LocalDate EPOCH = LocalDate.of(2001, 1, 1);
    static final LocalDate END = LocalDate.of(2025, 1, 1);

    /** One day of readings. */
    record Visit(LocalDate on, int instrument, double celsius) {
        long day() {
            return on.toEpochDay() - EPOCH.toEpochDay();
        }
    }

    static Depot of(Dice dice) {
        double years = dice.between(3.0, 20.0);
        double interval = dice.between(.25, 1.0);
        int instrument = dice.between(0, Instruments.COUNT - 1);
        List<Visit> visits = new ArrayList<>();
        LocalDate on = END.minusDays(Math.round(years * 365.25));
        while (on.isBefore(END)) {
            double season = 5 * Math.sin(2 * Math.PI * on.getDayOfYear() / 365.0);
            visits.add(new Visit(on, instrument, 22 + season + dice.normal(2)));
            double wait = interval * dice.between(.8, 1.25);
            on = on.plusDays(Math.max(7, Math.round(wait * 365.25)));
            instrument = dice.happens(.15 * wait) ? dice.between(0, Instruments.COUNT - 1) : instrument;
        }
        return new Depot(visits);
    }
}
