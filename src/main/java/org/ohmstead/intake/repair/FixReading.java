package org.ohmstead.intake.repair;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/**
 * One reading of one jar or link.
 *
 * @param position of the jar, or ordinal of the link
 * @param strap of the link, counted from 1; 0 for a jar
 * @param from what stood there before; null when nothing did
 * @param to null when it counts as not measured
 */
public record FixReading(
        ColumnKind what,
        int position,
        int strap,
        @Nullable Double from,
        @Nullable Double to) implements Step {

    public FixReading {
        if (what == null || what == ColumnKind.POSITION) {
            throw new Refused("Name what is put right: ohmic value, volts, temperature, gravity or link.");
        }
        if ((what == ColumnKind.LINK) != (strap > 0)) {
            throw new Refused("A link's reading names its strap, counted from 1; a jar's names none (0).");
        }
        if (to != null && !Double.isFinite(to)) {
            throw new Refused("A reading is a number, or nothing when it was not measured.");
        }
    }

    /** The same with what stands there now. */
    public FixReading seenIn(SurveySheet sheet) {
        double now = sheet.rows().stream()
                .filter(row -> row.position() == position)
                .mapToDouble(this::valueIn)
                .findFirst()
                .orElse(Double.NaN);
        return new FixReading(what, position, strap, Double.isNaN(now) ? null : now, to);
    }

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        if (what != ColumnKind.LINK || position != 0) {
            ground.requireJar(position);
        }
        List<ReadingRow> rows = new ArrayList<>(sheet.rows());
        int at = 0;
        while (at < rows.size() && rows.get(at).position() != position) {
            at++;
        }
        if (at == rows.size()) {
            rows.add(empty(sheet.strapColumns()));
        }
        ReadingRow before = rows.get(at);
        rows.set(at, fixed(before));
        int column = sheet.columnOf(what) + Math.max(0, strap - 1);
        return Rows.without(Rows.with(sheet, rows), before.line(), column);
    }

    @Override
    public String words() {
        String where = what == ColumnKind.LINK ? "Link " + position + ", strap " + strap : "Jar " + position;
        return where + ": " + (to == null ? "not measured" : number(to)) + " " + unit()
                + (from == null ? ", where nothing stood" : " instead of " + number(from));
    }

    @Override
    public boolean needsJudgement() {
        return true;
    }

    private String unit() {
        return switch (what) {
            case JAR_OHMIC -> "ohmic";
            case JAR_VOLTS -> "V";
            case JAR_CELSIUS -> "°C";
            case JAR_GRAVITY -> "SG";
            case LINK -> "µΩ";
            case POSITION -> "";
        };
    }

    private ReadingRow fixed(ReadingRow row) {
        double value = to == null ? Double.NaN : to;
        return new ReadingRow(
                row.line(),
                row.position(),
                what == ColumnKind.JAR_OHMIC ? value : row.ohmic(),
                what == ColumnKind.JAR_VOLTS ? value : row.volts(),
                what == ColumnKind.JAR_CELSIUS ? value : row.celsius(),
                what == ColumnKind.JAR_GRAVITY ? value : row.gravity(),
                what == ColumnKind.LINK ? strapped(row.linkMicroohms(), value) : row.linkMicroohms());
    }

    private double[] strapped(double[] links, double value) {
        double[] straps = Arrays.copyOf(links, Math.max(links.length, strap));
        Arrays.fill(straps, links.length, straps.length, Double.NaN);
        straps[strap - 1] = value;
        return straps;
    }

    private double valueIn(ReadingRow row) {
        return switch (what) {
            case JAR_OHMIC -> row.ohmic();
            case JAR_VOLTS -> row.volts();
            case JAR_CELSIUS -> row.celsius();
            case JAR_GRAVITY -> row.gravity();
            case LINK -> strap <= row.linkMicroohms().length ? row.linkMicroohms()[strap - 1] : Double.NaN;
            case POSITION -> Double.NaN;
        };
    }

    private ReadingRow empty(int straps) {
        double[] links = new double[straps];
        Arrays.fill(links, Double.NaN);
        return new ReadingRow(0, position, Double.NaN, Double.NaN, Double.NaN, Double.NaN, links);
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
