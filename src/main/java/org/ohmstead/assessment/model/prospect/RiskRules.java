package org.ohmstead.assessment.model.prospect;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.Limit;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.assessment.model.forecast.UnitForecast;
import org.ohmstead.kernel.Urgency;

/** What the forecast asks for; the table is in {@code docs/assessment.md}. It adds to the rules and never takes away. */
final class RiskRules {

    private static final String CHANGES = "A capacity test that it passes, or readings that stop rising.";

    private final LocalDate asOf;
    private final boolean onFloat;
    private final Limits limits;

    RiskRules(LocalDate asOf, boolean onFloat, Limits limits) {
        this.asOf = asOf;
        this.onFloat = onFloat;
        this.limits = limits;
    }

    List<Reason> of(JarJudgement jar, UnitForecast forecast) {
        List<Reason> reasons = new ArrayList<>();
        addIfSaid(reasons, risk(jar, forecast));
        addIfSaid(reasons, readApart(forecast, Rule.JAR_READ_APART, jar.reasons()));
        return reasons;
    }

    List<Reason> of(LinkJudgement link, UnitForecast forecast) {
        List<Reason> reasons = new ArrayList<>();
        addIfSaid(reasons, risk(forecast));
        addIfSaid(reasons, readApart(forecast, Rule.LINK_READ_APART, link.reasons()));
        return reasons;
    }

    private @Nullable Reason risk(JarJudgement jar, UnitForecast forecast) {
        if (forecast.readings() == 0 || !(forecast.score() >= limits.of(Limit.RISK_NOTE))) {
            return null;
        }
        Urgency asks = asks(jar, forecast);
        return asks == Urgency.CLEAR
                ? Reason.note(Rule.JAR_RISK, words(forecast), CHANGES)
                : Reason.asking(Rule.JAR_RISK, asks, words(forecast), CHANGES, limits);
    }

    private Urgency asks(JarJudgement jar, UnitForecast forecast) {
        if (forecast.score() < limits.of(Limit.RISK_FLAG)) {
            return Urgency.CLEAR;
        }
        if (!onFloat || !isSettled(forecast)) {
            return Urgency.RECHECK;
        }
        boolean seenByHand = atLeast(jar.changeOnBaseline(), limits.of(Limit.JAR_RISE_NOTE))
                || atLeast(
                        jar.voltsOffMedian() == null ? null : -jar.voltsOffMedian(), limits.of(Limit.VOLTS_OFF_MEDIAN));
        return seenByHand && forecast.score() >= limits.of(Limit.RISK_ACT) ? Urgency.ACT : Urgency.PLAN;
    }

    private static boolean atLeast(@Nullable Double value, double edge) {
        return value != null && value >= edge;
    }

    private boolean isSettled(UnitForecast forecast) {
        return forecast.readings() >= limits.countOf(Limit.RISK_READINGS) && Double.isNaN(forecast.pendingChange());
    }

    private String words(UnitForecast forecast) {
        if (forecast.beyondLimit() >= 0.5) {
            return "Past its limit already with a chance of " + ChanceWords.of(forecast.beyondLimit()) + ".";
        }
        if (forecast.shortWeight() >= 0.5) {
            return "Its volts behave like those of a jar with a shorted cell (chance "
                    + ChanceWords.of(forecast.shortWeight()) + ").";
        }
        return "A " + ChanceWords.of(forecast.score())
                + " chance of passing its limit within twelve months; most likely "
                + ChanceWords.range(asOf, forecast.early(), forecast.late()) + ".";
    }

    private @Nullable Reason risk(UnitForecast link) {
        if (link.readings() < limits.countOf(Limit.RISK_READINGS) || !(link.score() >= limits.of(Limit.RISK_FLAG))) {
            return null;
        }
        String words =
                "Passing 20 % over its value when made within twelve months is " + ChanceWords.coarse(link.score())
                        + "; dates of links cannot be told, and a joint that works loose gives no warning.";
        String change = "A remake, or readings that stop rising.";
        boolean plan = link.score() >= limits.of(Limit.LINK_RISK_PLAN) && Double.isNaN(link.pendingChange());
        return plan
                ? Reason.asking(Rule.LINK_RISK, Urgency.PLAN, words, change, limits)
                : Reason.note(Rule.LINK_RISK, words, change);
    }

    /** A reading set aside is read again, unless a rule asks for that or more already. */
    private @Nullable Reason readApart(UnitForecast forecast, Rule rule, List<Reason> said) {
        if (Double.isNaN(forecast.pendingChange())
                || said.stream().anyMatch(reason -> reason.asks() != Urgency.CLEAR)) {
            return null;
        }
        long percent = Math.round(Math.expm1(Math.abs(forecast.pendingChange())) * 100);
        String words = "The last reading lies " + percent + " % " + (forecast.pendingChange() > 0 ? "over" : "under")
                + " what its own history made expect: set aside until it is read again.";
        return Reason.asking(
                rule, Urgency.RECHECK, words, "A second reading, which either confirms it or shows a slip.", limits);
    }

    private static void addIfSaid(List<Reason> reasons, @Nullable Reason reason) {
        if (reason != null) {
            reasons.add(reason);
        }
    }
}
