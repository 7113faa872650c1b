package org.ohmstead.assessment.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.estate.Expected;

/** Numbers as the pages of the estate's forecast show them: no finer than they are known, with a true minus. */
public final class Shown {

    private static final String SPACE = "\u00a0";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);

    /** For templates, which can only call methods on something they hold. */
    static final Shown FOR_PAGES = new Shown();

    private Shown() {}

    /** "0.4", "7", "less than 0.1". */
    public String about(double expected) {
        if (expected > 0 && expected < 0.05) {
            return "<" + SPACE + "0.1";
        }
        return expected < 9.95
                ? String.format(Locale.UK, "%.1f", expected)
                : String.format(Locale.UK, "%,d", Math.round(expected));
    }

    /** "2 to 8"; one number where both ends are the same. */
    public String range(Expected expected) {
        return expected.low() == expected.high()
                ? count(expected.low())
                : count(expected.low()) + SPACE + "to" + SPACE + count(expected.high());
    }

    public String count(long count) {
        return String.format(Locale.UK, "%,d", count);
    }

    /** 0.031 is "+3.1 %". */
    public String signed(@Nullable Double share) {
        if (share == null || !Double.isFinite(share)) {
            return "–";
        }
        String percent = String.format(Locale.UK, "%.1f", Math.abs(share * 100));
        String sign = percent.equals("0.0") ? "±" : share < 0 ? "−" : "+";
        return sign + percent + SPACE + "%";
    }

    /** 0.871 is "87 %". */
    public String share(double share) {
        return Double.isFinite(share) ? Math.round(share * 100) + SPACE + "%" : "–";
    }

    public String years(double years) {
        return String.format(Locale.UK, "%.1f", years) + SPACE + "years";
    }

    /** Four significant figures. */
    public String figures(double value) {
        return new BigDecimal(value).round(new MathContext(4)).toPlainString();
    }

    /** A logarithmic rise as a share. */
    public double rise(double logarithmic) {
        return Math.expm1(logarithmic);
    }

    /** One decimal. */
    public String decimal(double value) {
        return String.format(Locale.UK, "%.1f", value);
    }

    public String day(@Nullable LocalDate day) {
        return day == null ? "–" : DAY.format(day).replace(" ", SPACE);
    }
}
