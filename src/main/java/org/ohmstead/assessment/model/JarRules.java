package org.ohmstead.assessment.model;

import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/** All rules on a jar in one list; those on volts, temperature and presence stand here. */
final class JarRules {

    /** Cells of about 1.215 gravity float in this range; the low-volt limits from memory hold for them only. */
    private static final double LEAST_FLOAT_1215 = 2.15;

    private static final double MOST_FLOAT_1215 = 2.25;

    private static final List<BiFunction<JarCase, Limits, @Nullable Reason>> ALL = List.of(
            JarOhmicRules::overBaseline,
            JarOhmicRules::underBaseline,
            JarOhmicRules::overLot,
            JarOhmicRules::step,
            JarRules::voltsLow,
            JarRules::voltsOffMedian,
            JarRules::hot,
            JarRules::notRead);

    private JarRules() {}

    static JarJudgement judge(JarCase jar, Limits limits) {
        List<Reason> reasons = jar.presence() == JarCase.Presence.VACANT
                ? List.of(Reason.note(Rule.JAR_NOT_READ, "No jar sits here.", "A jar put in."))
                : Verdicts.reasons(jar, limits, ALL);
        return JarJudgement.of(jar, reasons);
    }

    static @Nullable Reason voltsLow(JarCase jar, Limits limits) {
        VoltsEvidence volts = jar.volts();
        double low = limits.of(Limit.FLOAT_LOW);
        if (!isVented1215(jar.type()) || !(volts.perCell() < low) || volts.medianPerCell() < low) {
            return null;
        }
        boolean belowFloor = volts.perCell() < limits.of(Limit.FLOAT_FLOOR);
        boolean borneOut = volts.perCellBefore() < low;
        Urgency asks = !borneOut ? Urgency.RECHECK : belowFloor ? Urgency.ACT : Urgency.PLAN;
        String words = "Floats at " + Words.volts(volts.perCell()) + " per cell, below "
                + Words.volts(belowFloor ? limits.of(Limit.FLOAT_FLOOR) : low)
                + " (for cells of 1.215 gravity; limit from memory).";
        Reason reason = Reason.asking(
                Rule.JAR_VOLTS_LOW, asks, words, "A reading on float above " + Words.volts(low) + " per cell.", limits);
        return reason.soonIf(belowFloor, limits);
    }

    private static boolean isVented1215(JarTypeFacts type) {
        double set = type.floatVoltsPerCell();
        return type.technology() == Technology.VENTED_LEAD_ACID
                && !(set < LEAST_FLOAT_1215)
                && !(set > MOST_FLOAT_1215);
    }

    static @Nullable Reason voltsOffMedian(JarCase jar, Limits limits) {
        VoltsEvidence volts = jar.volts();
        double edge = limits.of(Limit.VOLTS_OFF_MEDIAN);
        if (!(Math.abs(volts.offMedian()) >= edge)) {
            return null;
        }
        String words = "Floats at " + Words.volts(volts.volts()) + ", " + Words.fineChange(volts.offMedian())
                + " off the string's median.";
        String change = "A reading on float within " + Words.percent(edge) + " of the median.";
        if (volts.offMedian() > 0) {
            return Reason.note(Rule.JAR_VOLTS_OFF_MEDIAN, words, change);
        }
        boolean borneOut = Verdicts.isBorneOut(-volts.offMedianBefore(), edge);
        return Reason.asking(
                Rule.JAR_VOLTS_OFF_MEDIAN, borneOut ? Urgency.PLAN : Urgency.RECHECK, words, change, limits);
    }

    static @Nullable Reason hot(JarCase jar, Limits limits) {
        double over = jar.celsius() - jar.medianCelsius();
        if (!(over > limits.of(Limit.TEMPERATURE_SPREAD))) {
            return null;
        }
        String words =
                "Is " + Words.kelvin(over) + " warmer than the median jar (" + Words.celsius(jar.celsius()) + ").";
        String change = "A reading within " + Words.kelvin(limits.of(Limit.TEMPERATURE_SPREAD)) + " of the median.";
        return over >= limits.of(Limit.HOT_JAR)
                ? Reason.asking(Rule.JAR_HOT, Urgency.ACT, words, change, limits)
                : Reason.note(Rule.JAR_HOT, words, change);
    }

    static @Nullable Reason notRead(JarCase jar, Limits limits) {
        Reading last = jar.ohmic().last();
        String change = "A reading.";
        return switch (jar.presence()) {
            case SKIPPED -> {
                String words = last == null
                        ? "Has never been read."
                        : "Was not read in the last survey; last read " + last.takenOn() + ".";
                yield Reason.asking(Rule.JAR_NOT_READ, Urgency.RECHECK, words, change, limits);
            }
            case NOT_YET ->
                Reason.note(
                        Rule.JAR_NOT_READ,
                        "Not read yet; sitting since " + jar.spell().during().from() + ".",
                        change);
            case READ, VACANT -> null;
        };
    }
}
