package org.ohmstead.onsite.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.onsite.Walk;

/** Numbers and days as the long form shows them; a dash for what is missing. */
public final class WalkWords {

    /** For templates, which can only call methods on something they hold. */
    public static final WalkWords FOR_PAGES = new WalkWords();

    private static final MathContext FIVE = new MathContext(5);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);

    private WalkWords() {}

    /** A figure of the string as a whole, under the name of its field. */
    public record Fact(
            String name,
            String label,
            String unit,
            @Nullable Double last) {}

    /** In the order in which they are taken. */
    public static List<Fact> facts(Walk walk) {
        Walk.LastSurvey last = walk.last();
        return List.of(
                new Fact("ambientCelsius", "Ambient", "°C", last == null ? null : last.ambientCelsius()),
                new Fact("stringVolts", "String voltage", "V", last == null ? null : last.stringVolts()),
                new Fact("floatAmps", "Float current", "A", last == null ? null : last.floatAmps()),
                new Fact("rippleAmps", "Ripple current", "A", last == null ? null : last.rippleAmps()),
                new Fact("injectedAmps", "Injected test current", "A", last == null ? null : last.injectedAmps()),
                new Fact("clampedAmps", "Clamped at an inner strap", "A", last == null ? null : last.injectedAmps()));
    }

    public static String quantity(@Nullable Double value, String unit) {
        return value == null
                ? "–"
                : new BigDecimal(value)
                                .round(FIVE)
                                .stripTrailingZeros()
                                .toPlainString()
                                .replace('-', '−') + "\u00a0" + unit;
    }

    public static String day(@Nullable LocalDate day) {
        return day == null ? "–" : DAY.format(day).replace(' ', '\u00a0');
    }
}
