package org.ohmstead.intake.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.ohmstead.ledger.SurveyFacts;

/** What is known of a survey as a whole, beside the survey before. */
final class SurveyFactLines {

    private static final MathContext FIVE = new MathContext(5);

    private final SurveyFacts now;
    private final @Nullable SurveyFacts before;
    private final List<Line> lines = new ArrayList<>();

    private SurveyFactLines(SurveyFacts now, @Nullable SurveyFacts before) {
        this.now = now;
        this.before = before;
    }

    /** One fact with its unit; empty where it was not recorded. */
    record Line(String name, String now, String before) {}

    /** Only facts that one of the two surveys has. */
    static List<Line> of(SurveyFacts now, @Nullable SurveyFacts before) {
        SurveyFactLines facts = new SurveyFactLines(now, before);
        facts.add("Ohmic frequency", "Hz", SurveyFacts::ohmicHertz);
        facts.add("Ambient", "°C", SurveyFacts::ambientCelsius);
        facts.add("String voltage", "V", SurveyFacts::stringVolts);
        facts.add("Float current", "A", SurveyFacts::floatAmps);
        facts.add("Ripple current", "A", SurveyFacts::rippleAmps);
        facts.add("Ripple voltage", "V", SurveyFacts::rippleVolts);
        facts.add("Injected current", "A", SurveyFacts::injectedAmps);
        facts.add("Clamped current", "A", SurveyFacts::clampedAmps);
        return facts.lines;
    }

    private void add(String name, String unit, ToDoubleFunction<SurveyFacts> fact) {
        String seen = text(fact.applyAsDouble(now), unit);
        String seenBefore = before == null ? "" : text(fact.applyAsDouble(before), unit);
        if (!seen.isEmpty() || !seenBefore.isEmpty()) {
            lines.add(new Line(name, seen, seenBefore));
        }
    }

    private static String text(double value, String unit) {
        return Double.isNaN(value)
                ? ""
                : new BigDecimal(value).round(FIVE).stripTrailingZeros().toPlainString() + " " + unit;
    }
}
