package org.ohmstead.demo;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;

/** Writes a survey as a survey sheet; its form is described in docs/survey-files.md. */
public final class SheetText {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ROOT);

    private final StringBuilder text = new StringBuilder();

    private SheetText() {}

    /**
     * @param site code of the site
     * @param string name of the string
     * @param siteTime of the survey, on the site's own clock
     */
    public static String of(NewSurvey survey, String site, String string, LocalDateTime siteTime) {
        SheetText sheet = new SheetText();
        sheet.text.append("ohmstead survey sheet,1\n");
        sheet.fact("site", site);
        sheet.fact("string", string);
        sheet.fact("taken at", siteTime.format(MINUTE));
        sheet.facts(survey.facts());
        sheet.readings(survey.readings(), survey.facts().ohmicKind());
        return sheet.text.toString();
    }

    private void facts(SurveyFacts facts) {
        fact("taken by", facts.takenBy());
        fact("instrument", facts.instrument());
        fact("instrument calibration due", facts.calibrationDue());
        fact("ohmic kind", facts.ohmicKind().words());
        number("ohmic frequency Hz", facts.ohmicHertz());
        number("ambient °C", facts.ambientCelsius());
        number("string volts V", facts.stringVolts());
        number("float current A", facts.floatAmps());
        number("ripple current A", facts.rippleAmps());
        number("ripple volts V", facts.rippleVolts());
        number("injected current A", facts.injectedAmps());
        number("clamped current A", facts.clampedAmps());
        fact("on float", facts.onFloat() ? "yes" : "no");
        fact("note", facts.note());
    }

    private void fact(String key, @Nullable Object value) {
        if (value != null && !value.toString().isEmpty()) {
            text.append(key).append(',').append(value).append('\n');
        }
    }

    private void number(String key, double value) {
        fact(key, shown(value));
    }

    private void readings(Readings readings, OhmicKind kind) {
        boolean gravity = !Arrays.stream(readings.gravity()).allMatch(Double::isNaN);
        text.append("\nposition,jar ").append(kind.unit()).append(",jar V,jar °C");
        text.append(gravity ? ",jar SG" : "");
        for (int strap = 1; strap <= readings.widestLink(); strap++) {
            text.append(strap == 1 ? ",link µΩ" : ",link " + strap + " µΩ");
        }
        text.append('\n');
        for (int row = 0; row <= readings.positions(); row++) {
            row(readings, row, gravity);
        }
    }

    private void row(Readings readings, int row, boolean gravity) {
        text.append(row);
        jar(readings.ohmic(), row);
        jar(readings.volts(), row);
        jar(readings.celsius(), row);
        if (gravity) {
            jar(readings.gravity(), row);
        }
        double[] straps = readings.linkMicroohms()[row];
        for (int strap = 0; strap < readings.widestLink(); strap++) {
            text.append(',').append(strap < straps.length ? shown(straps[strap]) : "");
        }
        text.append('\n');
    }

    private void jar(double[] values, int row) {
        text.append(',').append(row == 0 ? "" : shown(values[row - 1]));
    }

    private static String shown(double value) {
        if (Double.isNaN(value)) {
            return "";
        }
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
