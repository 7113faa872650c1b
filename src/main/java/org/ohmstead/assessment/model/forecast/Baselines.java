package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.statistics.Quantiles;

/**
 * Values when new as the register knows them. One and the same value for most jars is the maker's, and tells about the
 * string, not about the jar.
 */
record Baselines(StringPlan plan, List<JarSpell> spells, OhmicKind kind) {

    /** One logarithm per position for the jars the string started with; all NaN when they are not jar by jar. */
    double[] whenNew() {
        double[] logs = logs(plan.inServiceOn());
        return isOneValue(logs) || known(logs) < 2 ? missing() : logs;
    }

    /** Logarithm of the level when new: the maker's reference, or the one value entered for most jars; NaN if unknown. */
    double reference() {
        double[] logs = logs(plan.inServiceOn());
        if (isOneValue(logs)) {
            return Quantiles.median(logs);
        }
        return plan.jarType().referenceKind() == kind ? signed(plan.jarType().referenceOhmic()) : Double.NaN;
    }

    /** Tells a jar fitted later its own value when new. */
    void applyTo(GroupState jars, int index, LocalDate day) {
        double log = logs(day)[index];
        Gaussian common = jars.common.state;
        double variance = common.cov(CommonState.LEVEL, CommonState.LEVEL);
        boolean levelKnown = jars.surveys > 0;
        if (Double.isFinite(log) && levelKnown && !isOneValue(logs(plan.inServiceOn()))) {
            double reading = log - common.mean[CommonState.LEVEL];
            jars.units[index].observe(reading, jars.readingVariance + variance);
        }
    }

    private double[] logs(LocalDate day) {
        double[] logs = missing();
        for (JarSpell spell : spells) {
            int index = spell.position() - 1;
            boolean started = !spell.during().from().isAfter(day);
            if (started && index >= 0 && index < logs.length) {
                logs[index] = signed(spell.baselineOhmic());
            }
        }
        return logs;
    }

    private double signed(double value) {
        double log = LogReadings.log(value);
        return kind.risesWithAge() ? log : -log;
    }

    private double[] missing() {
        double[] missing = new double[plan.positions()];
        Arrays.fill(missing, Double.NaN);
        return missing;
    }

    private static int known(double[] logs) {
        return (int) Arrays.stream(logs).filter(Double::isFinite).count();
    }

    private static boolean isOneValue(double[] logs) {
        double middle = Quantiles.median(logs);
        long same = Arrays.stream(logs).filter(log -> log == middle).count();
        return same > 0 && 2 * same > known(logs);
    }
}
