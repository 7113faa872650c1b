package org.ohmstead.intake.repair;

import java.math.BigDecimal;
import java.util.Arrays;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/**
 * A whole column is of another unit than its title says: milli for micro. The decimal point is moved, and no digit changes.
 *
 * @param powerOfTen 3 or −3
 */
public record ScaleColumn(ColumnKind column, int powerOfTen) implements Step {

    private static final int THOUSAND = 3;

    public ScaleColumn {
        if (Math.abs(powerOfTen) != THOUSAND) {
            throw new Refused("A unit slip is of a thousand: powerOfTen is 3 or -3.");
        }
        if (column != ColumnKind.JAR_OHMIC && column != ColumnKind.JAR_VOLTS && column != ColumnKind.LINK) {
            throw new Refused("Only ohmic values, volts and links have units a thousand apart.");
        }
    }

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        return Rows.with(sheet, sheet.rows().stream().map(this::scaled).toList());
    }

    @Override
    public String words() {
        String what = switch (column) {
            case LINK -> "the links";
            case JAR_VOLTS -> "the jars' volts";
            default -> "the jars' ohmic values";
        };
        return "Read " + what + " as " + (powerOfTen < 0 ? "a thousandth" : "a thousand times")
                + " of what their column's unit makes them";
    }

    private ReadingRow scaled(ReadingRow row) {
        return new ReadingRow(
                row.line(),
                row.position(),
                column == ColumnKind.JAR_OHMIC ? scaled(row.ohmic()) : row.ohmic(),
                column == ColumnKind.JAR_VOLTS ? scaled(row.volts()) : row.volts(),
                row.celsius(),
                row.gravity(),
                column == ColumnKind.LINK
                        ? Arrays.stream(row.linkMicroohms()).map(this::scaled).toArray()
                        : row.linkMicroohms());
    }

    private double scaled(double value) {
        return Double.isNaN(value)
                ? value
                : BigDecimal.valueOf(value).scaleByPowerOfTen(powerOfTen).doubleValue();
    }
}
