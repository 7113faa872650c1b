package org.ohmstead.assessment.model;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/** The rules on a jar's ohmic value. Each says nothing (null) or gives its reason. None of them speaks of capacity. */
final class JarOhmicRules {

    private JarOhmicRules() {}

    static @Nullable Reason overBaseline(JarCase jar, Limits limits) {
        OhmicEvidence ohmic = jar.ohmic();
        if (!(ohmic.rise() >= limits.of(Limit.JAR_RISE_NOTE))) {
            return null;
        }
        Limit crossed = ohmic.rise() >= limits.of(Limit.JAR_RISE_ACT)
                ? Limit.JAR_RISE_ACT
                : ohmic.rise() >= limits.of(Limit.JAR_RISE_PLAN) ? Limit.JAR_RISE_PLAN : Limit.JAR_RISE_NOTE;
        Urgency asks = asks(jar, crossed, limits);
        String change = changeLine(jar, crossed, limits);
        Reason reason = Reason.asking(Rule.JAR_OVER_BASELINE, asks, riseWords(ohmic), change, limits);
        return reason.soonIf(crossed == Limit.JAR_RISE_ACT && asks == Urgency.RECHECK, limits);
    }

    private static Urgency asks(JarCase jar, Limit crossed, Limits limits) {
        OhmicEvidence ohmic = jar.ohmic();
        boolean byTypeOnly = Objects.requireNonNull(ohmic.baseline()).isOfType();
        boolean likeItsLot = ohmic.lotRise() < limits.of(Limit.LOT_RISE);
        if (crossed == Limit.JAR_RISE_NOTE || (byTypeOnly && likeItsLot)) {
            return Urgency.CLEAR;
        }
        if (!jar.onFloat() || !Verdicts.isBorneOut(ohmic.riseBefore(), limits.of(crossed))) {
            return Urgency.RECHECK;
        }
        return crossed == Limit.JAR_RISE_ACT && !byTypeOnly ? Urgency.ACT : Urgency.PLAN;
    }

    private static String riseWords(OhmicEvidence ohmic) {
        String before = Double.isNaN(ohmic.riseBefore())
                ? "; it is the first reading to compare"
                : "; the reading before stood at " + Words.change(ohmic.riseBefore());
        return valueWords(ohmic) + " is " + Words.change(ohmic.rise()) + reciprocal(ohmic) + " against its baseline of "
                + baselineWords(ohmic) + before + ".";
    }

    private static String changeLine(JarCase jar, Limit crossed, Limits limits) {
        OhmicEvidence ohmic = jar.ohmic();
        Reading last = Objects.requireNonNull(ohmic.last());
        double edge = Objects.requireNonNull(ohmic.baseline()).valueAt(last.kind(), limits.of(crossed));
        String direction = last.kind().risesWithAge() ? "below " : "above ";
        return "A reading " + direction + Words.ohmic(last.kind(), edge) + " (" + Words.change(limits.of(crossed))
                + "), a capacity test that the string passes, or a better baseline.";
    }

    static @Nullable Reason underBaseline(JarCase jar, Limits limits) {
        OhmicEvidence ohmic = jar.ohmic();
        double fall = -ohmic.rise();
        if (!(fall >= limits.of(Limit.JAR_FALL))
                || Objects.requireNonNull(ohmic.baseline()).isOfType()) {
            return null;
        }
        boolean voltsLow = -jar.volts().offMedian() >= limits.of(Limit.VOLTS_OFF_MEDIAN);
        boolean borneOut = Verdicts.isBorneOut(-ohmic.riseBefore(), limits.of(Limit.JAR_FALL));
        String meaning = voltsLow
                ? " With its volts low as well a short inside the jar is likely."
                : " A jar replaced without record, a wrong position or a slipped probe would look like this.";
        String words = valueWords(ohmic) + " is " + Words.change(ohmic.rise()) + reciprocal(ohmic)
                + " against its baseline of " + baselineWords(ohmic) + "." + meaning;
        Urgency asks = voltsLow && borneOut && jar.onFloat() ? Urgency.ACT : Urgency.RECHECK;
        return Reason.asking(
                Rule.JAR_UNDER_BASELINE, asks, words, "A second reading, or the record of a replacement.", limits);
    }

    static @Nullable Reason overLot(JarCase jar, Limits limits) {
        OhmicEvidence ohmic = jar.ohmic();
        double edge = limits.of(Limit.LOT_RISE);
        if (!(ohmic.lotRise() >= edge) || !(ohmic.z() >= limits.of(Limit.LOT_Z))) {
            return null;
        }
        String words = valueWords(ohmic) + " is " + Words.change(ohmic.lotRise()) + reciprocal(ohmic)
                + " against the median of the jars that came with it (" + Words.number(ohmic.z())
                + " robust standard deviations).";
        String change = "A reading within " + Words.percent(edge) + " of its lot.";
        boolean alwaysSo = ohmic.rise() < limits.of(Limit.JAR_RISE_NOTE)
                && ohmic.baseline() != null
                && !ohmic.baseline().isOfType();
        if (alwaysSo) {
            return Reason.note(Rule.JAR_OVER_LOT, words + " It has been so since its baseline.", change);
        }
        boolean borneOut = jar.onFloat() && Verdicts.isBorneOut(ohmic.lotRiseBefore(), edge);
        return Reason.asking(Rule.JAR_OVER_LOT, borneOut ? Urgency.PLAN : Urgency.RECHECK, words, change, limits);
    }

    static @Nullable Reason step(JarCase jar, Limits limits) {
        OhmicEvidence ohmic = jar.ohmic();
        if (ohmic.before() == null || !(Math.abs(ohmic.step()) >= Math.log1p(limits.of(Limit.JAR_STEP)))) {
            return null;
        }
        String words = valueWords(ohmic) + " has moved by " + Words.change(Math.expm1(ohmic.step()))
                + reciprocal(ohmic) + " beyond what the string did since "
                + ohmic.before().takenOn() + ".";
        return Reason.asking(
                Rule.JAR_STEP, Urgency.RECHECK, words, "A second reading that agrees with the earlier ones.", limits);
    }

    private static String valueWords(OhmicEvidence ohmic) {
        Reading last = Objects.requireNonNull(ohmic.last());
        String kind = last.kind().words();
        return Character.toUpperCase(kind.charAt(0)) + kind.substring(1) + " " + Words.ohmic(last.kind(), last.value())
                + " (" + last.takenOn() + ")";
    }

    private static String reciprocal(OhmicEvidence ohmic) {
        return Objects.requireNonNull(ohmic.last()).kind().risesWithAge() ? "" : " as a reciprocal";
    }

    private static String baselineWords(OhmicEvidence ohmic) {
        Baseline shown = Objects.requireNonNull(ohmic.baseline()).shown();
        return Words.ohmic(Objects.requireNonNull(ohmic.last()).kind(), shown.value()) + " (" + shown.words() + ")";
    }
}
