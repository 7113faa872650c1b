package org.ohmstead.overview;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.StringFigures;
import org.ohmstead.kernel.LinkName;

/** The figures of a string as people read them; what is not known is left out. */
final class StringFacts {

    private final List<StringPage.Fact> facts = new ArrayList<>();

    private StringFacts() {}

    static List<StringPage.Fact> of(StringFigures figures, int positions) {
        StringFacts all = new StringFacts();
        all.add("Jars, sum", figures.totalJarMilliohms(), 2, "mΩ", null);
        all.add("Links, sum", figures.totalLinkMicroohms(), 0, "µΩ", null);
        all.add("Step at design current", figures.voltageStepVolts(), 2, "V", "an estimate");
        all.weakest(figures, positions);
        all.share("Scatter of the jars", figures.scatter(), "robust, of the median");
        all.share("Jars near their limit", figures.shareNearLimit(), null);
        all.add("Float", figures.floatVoltsPerCell(), 3, "V/cell", expected(figures));
        all.add("Ripple", figures.rippleAmpsPer100Ah(), 1, "A per 100 Ah", null);
        all.add("Usual temperature", figures.usualCelsius(), 0, "°C", null);
        all.add("Age", figures.ageYears(), 1, "years", life(figures));
        return all.facts;
    }

    private void weakest(StringFigures figures, int positions) {
        if (figures.weakestPosition() != null) {
            facts.add(new StringPage.Fact("Weakest jar", "jar " + figures.weakestPosition(), null));
        }
        if (figures.weakestLink() != null) {
            facts.add(new StringPage.Fact("Weakest link", LinkName.of(figures.weakestLink(), positions), null));
        }
    }

    private void add(String name, @Nullable Double value, int decimals, String unit, @Nullable String note) {
        if (value != null) {
            facts.add(new StringPage.Fact(name, Figures.quantity(value, decimals, unit), note));
        }
    }

    private void share(String name, @Nullable Double value, @Nullable String note) {
        if (value != null) {
            facts.add(new StringPage.Fact(name, Figures.share(value), note));
        }
    }

    private static @Nullable String expected(StringFigures figures) {
        Double expected = figures.expectedFloatVoltsPerCell();
        return expected == null ? null : "expected " + Figures.quantity(expected, 3, "V/cell");
    }

    private static @Nullable String life(StringFigures figures) {
        return figures.lifeUsed() == null ? null : Figures.share(figures.lifeUsed()) + " of its expected life";
    }
}
