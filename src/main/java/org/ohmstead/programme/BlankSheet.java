package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyRecord;

/**
 * A survey sheet to be filled in: one row per position, empty readings. What was read last time, and beyond which reading
 * to read again on the spot, stand in lines that begin with #, which the intake passes over.
 */
final class BlankSheet {

    /** A connection that reads a fifth above its own last value is to be corrected (makers' manuals 92.30 and 95.10). */
    static final double CHANGE_TO_CHECK = 0.20;

    private static final int MOST_STRAPS = 9;

    private final StringBuilder text = new StringBuilder();
    private final StringBlueprint string;
    private final @Nullable SurveyRecord last;

    private BlankSheet(StringBlueprint string, @Nullable SurveyRecord last) {
        this.string = string;
        this.last = last;
    }

    static String of(StringBlueprint string, @Nullable SurveyRecord last, LocalDate planned, String crew) {
        BlankSheet sheet = new BlankSheet(string, last);
        sheet.head(planned, crew);
        sheet.rows();
        return sheet.text.toString();
    }

    private void head(LocalDate planned, String crew) {
        OhmicKind kind = kind();
        line("ohmstead survey sheet,1");
        line("# planned for " + planned + (crew.isEmpty() ? "" : ", " + crew).replace('\n', ' '));
        line("# fill in the time as 2026-03-09T10:30, by the site's clock; lines that begin with # are passed over");
        line("site," + string.site().code());
        line("string," + string.string().name());
        line("taken at,");
        line("taken by,");
        line("instrument,");
        line("ohmic kind," + kind.words());
        line("ohmic frequency Hz," + (last == null ? "" : shown(last.facts().ohmicHertz(), 1)));
        line("ambient °C,");
        line("string volts V,");
        line("float current A,");
        line("ripple current A,");
        line("injected current A,");
        line("clamped current A,");
        line("on float,yes");
        line("note,");
        line("");
        StringBuilder titles = new StringBuilder("position,jar " + kind.unit() + ",jar V,jar °C");
        for (int strap = 1; strap <= straps(); strap++) {
            titles.append(strap == 1 ? ",link µΩ" : ",link " + strap + " µΩ");
        }
        line(titles.toString());
    }

    private OhmicKind kind() {
        return last == null ? OhmicKind.IMPEDANCE : last.facts().ohmicKind();
    }

    private int straps() {
        int most = string.links().stream().mapToInt(link -> link.straps()).max().orElse(1);
        return Math.min(most, MOST_STRAPS);
    }

    private void rows() {
        int positions = string.string().positions();
        for (int position = 0; position <= positions; position++) {
            if (last != null && last.readings().positions() == positions) {
                line("# " + before(last.readings(), position));
            }
            line(position + ",,," + ",".repeat(straps()));
        }
    }

    /** "jar 7 last 0.412 mΩ, read again beyond 0.330 to 0.494; 2.251 V; link after it last 24.2 µΩ, read again above 29.0". */
    private String before(Readings readings, int position) {
        StringBuilder words = new StringBuilder(position == 0 ? "positive terminal" : "jar " + position);
        if (position > 0) {
            jar(words, readings.ohmic()[position - 1], readings.volts()[position - 1]);
        }
        double link = LinkSum.of(readings.linkMicroohms(), position);
        if (!Double.isNaN(link)) {
            words.append("; link last ")
                    .append(shown(link, 1))
                    .append(" µΩ, read again above ")
                    .append(shown(link * (1 + CHANGE_TO_CHECK), 1));
        }
        return words.toString();
    }

    private void jar(StringBuilder words, double ohmic, double volts) {
        if (!Double.isNaN(ohmic)) {
            words.append(" last ")
                    .append(shown(ohmic, 3))
                    .append(' ')
                    .append(kind().unit())
                    .append(", read again beyond ")
                    .append(shown(ohmic * (1 - CHANGE_TO_CHECK), 3))
                    .append(" to ")
                    .append(shown(ohmic * (1 + CHANGE_TO_CHECK), 3));
        }
        if (!Double.isNaN(volts)) {
            words.append("; ").append(shown(volts, 3)).append(" V");
        }
    }

    private static String shown(double value, int decimals) {
        return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private void line(String line) {
        text.append(line).append("\r\n");
    }
}
