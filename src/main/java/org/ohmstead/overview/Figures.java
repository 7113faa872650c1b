package org.ohmstead.overview;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;

/** Numbers and dates as people read them: with unit, no-break space and a true minus; a dash for what is missing. */
public final class Figures {

    private static final String NONE = "–";
    private static final String SPACE = "\u00a0";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.UK);

    /** For templates, which can only call methods on something they hold. */
    public static final Figures FOR_PAGES = new Figures();

    private Figures() {}

    public static String count(long count) {
        return String.format(Locale.UK, "%,d", count);
    }

    /** 0.41 is "+41 %". */
    public static String change(@Nullable Double share) {
        if (share == null || share.isNaN()) {
            return NONE;
        }
        long percent = Math.round(share * 100);
        return (percent > 0 ? "+" : percent < 0 ? "−" : "±") + Math.abs(percent) + SPACE + "%";
    }

    public static String share(@Nullable Double share) {
        return share == null || share.isNaN() ? NONE : Math.round(share * 100) + SPACE + "%";
    }

    public static String ohmic(@Nullable Double value, @Nullable OhmicKind kind) {
        if (value == null || value.isNaN() || kind == null) {
            return NONE;
        }
        int decimals = kind == OhmicKind.CONDUCTANCE ? 0 : value < 10 ? 3 : 2;
        return decimals(value, decimals) + SPACE + kind.unit();
    }

    public static String microohms(@Nullable Double value) {
        return value == null || value.isNaN() ? NONE : decimals(value, value < 100 ? 1 : 0) + SPACE + "µΩ";
    }

    public static String volts(@Nullable Double value) {
        return value == null || value.isNaN() ? NONE : decimals(value, value < 20 ? 3 : 1) + SPACE + "V";
    }

    public static String celsius(@Nullable Double value) {
        return value == null || value.isNaN() ? NONE : decimals(value, 0) + SPACE + "°C";
    }

    public static String millivolts(@Nullable Double value) {
        return value == null || value.isNaN() ? NONE : decimals(value, 1) + SPACE + "mV";
    }

    /** Any other quantity with its unit. */
    public static String quantity(@Nullable Double value, int decimals, String unit) {
        return value == null || value.isNaN() ? NONE : decimals(value, decimals) + SPACE + unit;
    }

    public static String day(@Nullable LocalDate day) {
        return day == null ? NONE : DAY.format(day).replace(' ', '\u00a0');
    }

    public static String weekday(@Nullable LocalDate day) {
        return day == null ? NONE : WEEKDAY.format(day);
    }

    public static String moment(@Nullable Instant moment, ZoneId zone) {
        return moment == null ? NONE : MOMENT.format(moment.atZone(zone));
    }

    /** "in 12 days", "today", "3 days ago". */
    public static String away(long days) {
        if (days == 0) {
            return "today";
        }
        String length = Words.counted(Math.abs(days), "day");
        return days > 0 ? "in " + length : length + " ago";
    }

    private static String decimals(double value, int decimals) {
        return Decimals.of(value, decimals);
    }
}
