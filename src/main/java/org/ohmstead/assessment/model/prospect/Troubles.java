package org.ohmstead.assessment.model.prospect;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.assessment.model.Trouble;
import org.ohmstead.assessment.model.forecast.UnitForecast;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/** The table of patterns: first row that fits. */
final class Troubles {

    /** Rise that the eye takes for a rise: half of the acceptable 20 %. */
    private static final double RISEN = 0.10;

    private static final double VOLTS_LOW = -0.02;
    private static final Set<Rule> ON_LINK_LEVEL = Set.of(Rule.LINK_OVER_BASELINE, Rule.LINK_OVER_KIND, Rule.LINK_RISK);

    private final Technology technology;
    private final double commonRise;
    private final List<LinkJudgement> links;

    Troubles(Technology technology, double commonRise, List<LinkJudgement> links) {
        this.technology = technology;
        this.commonRise = commonRise;
        this.links = links;
    }

    /** @return null when nothing asks, or no row fits */
    @Nullable
    Trouble of(JarJudgement jar, UnitForecast forecast, boolean asks) {
        if (forecast.renewedAround() != null) {
            return Trouble.REPLACED_UNRECORDED;
        }
        if (!Double.isNaN(forecast.pendingChange())) {
            return Trouble.MISREAD;
        }
        return asks ? ofOneThatAsks(jar, forecast) : null;
    }

    private @Nullable Trouble ofOneThatAsks(JarJudgement jar, UnitForecast forecast) {
        double change = orNaN(jar.changeOnBaseline());
        boolean voltsLow = orNaN(jar.voltsOffMedian()) <= VOLTS_LOW;
        if (forecast.shortWeight() >= 0.5 || (voltsLow && !(change >= RISEN))) {
            return Trouble.SHORTED_CELL;
        }
        if (asksFor(jar.reasons(), Rule.JAR_HOT)) {
            return Trouble.HEATING;
        }
        if (hasRisen(jar.position() - 1) && hasRisen(jar.position())) {
            return Trouble.POST;
        }
        if (forecast.stepped() && !voltsLow) {
            return Trouble.OPENING;
        }
        if (!(change >= RISEN || forecast.riseOverNew() >= RISEN)) {
            return null;
        }
        if (commonRise >= RISEN && !(orNaN(jar.changeOnMedian()) >= RISEN)) {
            return Trouble.WORN_TOGETHER;
        }
        return voltsLow ? null : ofOneThatRoseAlone();
    }

    private Trouble ofOneThatRoseAlone() {
        return technology.isValveRegulated() ? Trouble.DRY_OUT : Trouble.WEAR;
    }

    /** @return null when nothing asks, or no row fits */
    @Nullable
    Trouble of(LinkJudgement link, UnitForecast forecast, boolean asks) {
        if (forecast.renewedAround() != null) {
            return Trouble.REPLACED_UNRECORDED;
        }
        if (!Double.isNaN(forecast.pendingChange())) {
            return Trouble.MISREAD;
        }
        return asks ? ofOneThatAsks(link, forecast) : null;
    }

    private @Nullable Trouble ofOneThatAsks(LinkJudgement link, UnitForecast forecast) {
        int ordinal = link.ordinal();
        if (hasRisen(ordinal) && (hasRisen(ordinal - 1) || hasRisen(ordinal + 1))) {
            return Trouble.POST;
        }
        if (forecast.stepped()) {
            return Trouble.LOOSENED;
        }
        if (orNaN(link.changeOnBaseline()) >= RISEN) {
            return Trouble.CORRODING;
        }
        boolean overItsLike =
                asksFor(link.reasons(), Rule.LINK_INSTALLATION) || asksFor(link.reasons(), Rule.LINK_OVER_KIND);
        return overItsLike ? Trouble.BADLY_MADE : null;
    }

    private boolean hasRisen(int ordinal) {
        return ordinal >= 0
                && ordinal < links.size()
                && links.get(ordinal).reasons().stream()
                        .anyMatch(reason -> ON_LINK_LEVEL.contains(reason.rule()) && reason.asks() != Urgency.CLEAR);
    }

    private static boolean asksFor(List<Reason> reasons, Rule rule) {
        return reasons.stream().anyMatch(reason -> reason.rule() == rule && reason.asks() != Urgency.CLEAR);
    }

    private static double orNaN(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }
}
