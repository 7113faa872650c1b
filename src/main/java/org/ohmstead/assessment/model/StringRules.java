package org.ohmstead.assessment.model;

import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/** All rules on the string as a whole in one list. Each says nothing (null) or gives its reason. */
final class StringRules {

    private static final List<BiFunction<StringCase, Limits, @Nullable Reason>> ALL = List.of(
            StringRules::unsurveyed,
            StringRules::risen,
            StringRules::floatVoltage,
            StringRules::ripple,
            StringRules::temperatureSpread,
            StringRules::age,
            StringRules::drop);

    private StringRules() {}

    static List<Reason> judge(StringCase string, Limits limits) {
        return Verdicts.reasons(string, limits, ALL);
    }

    static @Nullable Reason unsurveyed(StringCase string, Limits limits) {
        return string.panel().last() >= 0
                ? null
                : new Reason(
                        Rule.STRING_UNSURVEYED,
                        Urgency.RECHECK,
                        "Has not been surveyed yet: nothing can be said of it.",
                        "A survey.",
                        0);
    }

    static @Nullable Reason risen(StringCase string, Limits limits) {
        double edge = limits.of(Limit.STRING_RISE);
        if (!(string.medianRise() >= edge)) {
            return null;
        }
        boolean borneOut = Verdicts.isBorneOut(string.medianRiseBefore(), edge);
        String words = "The median jar stands " + Words.change(string.medianRise())
                + " against its own baseline: the string ages as a whole. Only a capacity test shows what it can still do.";
        return Reason.asking(
                Rule.STRING_RISEN,
                borneOut ? Urgency.PLAN : Urgency.RECHECK,
                words,
                "A capacity test that the string passes.",
                limits);
    }

    static @Nullable Reason floatVoltage(StringCase string, Limits limits) {
        double off = string.floatOff();
        if (!(Math.abs(off) >= limits.of(Limit.SETPOINT_OFF))) {
            return null;
        }
        String words = "Floats at " + Words.volts(string.floatPerCell()) + " per cell; the set-point asks for "
                + Words.volts(string.expectedFloatPerCell()) + " at the temperature it was read.";
        String change = "Charger set to within " + Words.volts(limits.of(Limit.SETPOINT_OFF)) + " per cell.";
        double far = limits.of(Limit.SETPOINT_FAR);
        if (Math.abs(off) < far) {
            return Reason.note(Rule.STRING_FLOAT, words, change);
        }
        boolean borneOut = Verdicts.isBorneOut(Math.abs(string.floatOffBefore()), far);
        return Reason.asking(Rule.STRING_FLOAT, borneOut ? Urgency.PLAN : Urgency.RECHECK, words, change, limits);
    }

    static @Nullable Reason ripple(StringCase string, Limits limits) {
        double edge = limits.of(Limit.RIPPLE);
        if (!(string.ripplePer100Ah() > edge)) {
            return null;
        }
        boolean borneOut = Verdicts.isBorneOut(string.ripplePer100AhBefore(), edge);
        return Reason.asking(
                Rule.STRING_RIPPLE,
                borneOut ? Urgency.PLAN : Urgency.RECHECK,
                "Ripple current is " + Words.number(string.ripplePer100Ah()) + " A rms per 100 Ah, more than "
                        + Words.number(edge) + ": look at the charger's filter.",
                "A reading of " + Words.number(edge) + " A per 100 Ah or less.",
                limits);
    }

    static @Nullable Reason temperatureSpread(StringCase string, Limits limits) {
        double edge = limits.of(Limit.TEMPERATURE_SPREAD);
        return !(string.celsiusSpread() > edge)
                ? null
                : Reason.note(
                        Rule.STRING_TEMPERATURE_SPREAD,
                        "Jars differ by " + Words.kelvin(string.celsiusSpread()) + " in temperature, more than "
                                + Words.kelvin(edge) + ": look for a heat source or blocked air.",
                        "A spread of " + Words.kelvin(edge) + " or less.");
    }

    static @Nullable Reason age(StringCase string, Limits limits) {
        if (!(string.lifeUsed() >= limits.of(Limit.LIFE_TEST))) {
            return null;
        }
        String words = Words.years(string.ageYears()) + " old, " + Words.percent(string.lifeUsed()) + " of the "
                + Words.years(string.expectedYears()) + " expected at the temperature it lives in.";
        return Reason.asking(
                Rule.STRING_AGE,
                string.lifeUsed() >= 1 ? Urgency.PLAN : Urgency.CLEAR,
                words,
                "Renewal, or another design life entered for the jar type.",
                limits);
    }

    static @Nullable Reason drop(StringCase string, Limits limits) {
        double edge = limits.of(Limit.DROP_BETWEEN_JARS);
        long over = string.links().stream()
                .filter(link -> !link.isCable() && link.dropMillivolts() > edge)
                .count();
        return 2 * over <= string.links().size()
                ? null
                : Reason.note(
                        Rule.STRING_DROP,
                        over + " of " + string.links().size() + " links drop more than " + Words.millivolts(edge)
                                + " at the design current: a matter of design, not of single joints.",
                        "Heavier links or a smaller design current.");
    }
}
