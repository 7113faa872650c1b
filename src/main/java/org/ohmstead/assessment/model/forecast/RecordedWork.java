package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringPlan;

/** Jars fitted and links remade between two surveys, as the register knows them. Nothing after the survey is looked at. */
record RecordedWork(StringPlan plan, List<JarSpell> spells, List<LinkRemake> remakes) {
    private static final double DAYS_PER_YEAR = 365.25;

    /** Applies what happened after the last survey, up to and with the day of the next. */
    void apply(ForecastState state, LocalDate until, Baselines baselines) {
        double[] fitted = fittedBetween(state.last.takenOn(), until);
        double[] remade = remadeBetween(state.last.takenOn(), until);
        if (2 * count(fitted) > fitted.length) {
            renewString(state.jars, fitted);
        }
        for (int i = 0; i < fitted.length; i++) {
            if (fitted[i] >= 0) {
                state.jars.units[i].restart(fitted[i]);
                state.volts.restart(i);
                baselines.applyTo(state.jars, i, until);
            }
        }
        for (int i = 0; i < remade.length; i++) {
            if (remade[i] >= 0) {
                state.links.units[i].remake(remade[i]);
            }
        }
    }

    private double[] fittedBetween(@Nullable LocalDate after, LocalDate until) {
        double[] years = nothing(plan.positions());
        for (JarSpell spell : spells) {
            note(years, spell.position() - 1, spell.during().from(), after, until);
        }
        return years;
    }

    private double[] remadeBetween(@Nullable LocalDate after, LocalDate until) {
        double[] years = nothing(plan.positions() + 1);
        for (LinkRemake remake : remakes) {
            note(years, remake.ordinal(), remake.remadeOn(), after, until);
        }
        return years;
    }

    private void note(double[] years, int index, LocalDate on, @Nullable LocalDate after, LocalDate until) {
        boolean newer = on.isAfter(plan.inServiceOn()) && (after == null || on.isAfter(after)) && !on.isAfter(until);
        if (newer && index >= 0 && index < years.length) {
            years[index] = Math.max(years[index], yearsInService(plan, on));
        }
    }

    private static double[] nothing(int size) {
        double[] years = new double[size];
        Arrays.fill(years, -1);
        return years;
    }

    private static int count(double[] years) {
        return (int) Arrays.stream(years).filter(y -> y >= 0).count();
    }

    private static double latest(double[] years) {
        return Arrays.stream(years).max().orElse(0);
    }

    /** Most jars are new: the string's age starts again, and the few old ones keep their rise as their own. */
    private static void renewString(GroupState jars, double[] fitted) {
        double rise = jars.common.rise();
        for (int i = 0; i < fitted.length; i++) {
            if (fitted[i] < 0) {
                jars.units[i].raise(rise);
            }
        }
        jars.restartCommon(latest(fitted));
    }

    /** Years from the day the string went into service, never negative. */
    static double yearsInService(StringPlan plan, LocalDate day) {
        return Math.max(0, ChronoUnit.DAYS.between(plan.inServiceOn(), day) / DAYS_PER_YEAR);
    }
}
