package org.ohmstead.intake.check;

import java.util.Optional;

/** The test current against the clamp, and the ripple. */
final class Currents {

    private static final double HUNDRED = 100;

    private Currents() {}

    /** Z = V / I of this string: what the clamp inside it does not see ran elsewhere (common practice). */
    static Optional<Remark> pastClamp(SurveyUnderCheck survey) {
        double injected = survey.facts().injectedAmps();
        double clamped = survey.facts().clampedAmps();
        boolean differs =
                injected > 0 && Math.abs(clamped - injected) > survey.limits().clampShare() * injected;
        return differs
                ? Optional.of(Remark.of(
                        RemarkCode.CURRENT_PAST_CLAMP,
                        survey.fact("clamped current"),
                        Figures.of(clamped, "A") + " (" + Figures.percent(clamped / injected - 1) + ")",
                        Figures.of(injected, "A") + " injected"))
                : Optional.empty();
    }

    /** 5 A rms per 100 Ah of the 8 h rating: C&D RS-990 p. 18. */
    static Optional<Remark> rippleHigh(SurveyUnderCheck survey) {
        double ampereHours = survey.expected().jar().ratedAmpereHours();
        double limit = survey.limits().rippleAmpsPerHundredAmpereHours() * ampereHours / HUNDRED;
        double ripple = survey.facts().rippleAmps();
        return ripple > limit
                ? Optional.of(Remark.of(
                        RemarkCode.RIPPLE_HIGH,
                        survey.fact("ripple current"),
                        Figures.of(ripple, "A"),
                        "at most " + Figures.of(limit, "A")))
                : Optional.empty();
    }
}
