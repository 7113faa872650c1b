package org.ohmstead.intake.file;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads the numbers of one sheet. A sheet uses one decimal mark: the point always may be, the comma only where it does not
 * part the columns; the first number with a mark settles which. There are no thousands marks.
 */
final class NumberText {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:\\d{1,15}(?:[.,]\\d{0,30})?|[.,]\\d{1,30})(?:[eE][+-]?\\d{1,2})?");
    private static final Set<String> MISSING = Set.of("", "-", "–", "—", "n/a", "na");
    private static final Set<String> OVER_RANGE = Set.of("ol", "o.l.", "o.l", "over", "overload");
    private static final BigDecimal GREATEST = BigDecimal.valueOf(1_000_000_000);
    private static final char UNSETTLED = 0;

    private final boolean commaPartsColumns;
    private final Findings findings;
    private char mark = UNSETTLED;

    NumberText(boolean commaPartsColumns, Findings findings) {
        this.commaPartsColumns = commaPartsColumns;
        this.findings = findings;
    }

    /** The cell's number in the unit it is kept in; NaN when it is missing or cannot be read (which is then found). */
    double read(Cell cell, Unit written, Unit kept) {
        PlainNumber plain = PlainNumber.of(cell.text());
        if (plain != null && !(plain.hasPoint() && mark == ',') && written.isPowerOfTenOf(kept)) {
            mark = plain.hasPoint() ? '.' : mark;
            return plain.times(written.powerOfTenTo(kept));
        }
        return number(cell).map(number -> written.to(kept, number)).orElse(Double.NaN);
    }

    /** The cell's number as written; nothing when it is missing or cannot be read (which is then found). */
    private Optional<BigDecimal> number(Cell cell) {
        String digits = cell.text().replace('−', '-');
        return NUMBER.matcher(digits).matches() ? marked(cell, digits) : word(cell);
    }

    private Optional<BigDecimal> word(Cell cell) {
        String plain = Spelling.plain(cell.text());
        if (MISSING.contains(plain)) {
            return Optional.empty();
        }
        if (OVER_RANGE.contains(plain)) {
            findings.add(Finding.noted(
                    cell,
                    "The instrument was over its range here; the value counts as missing.",
                    "Measure it again with clean contact if you still can."));
            return Optional.empty();
        }
        return notANumber(cell);
    }

    private Optional<BigDecimal> marked(Cell cell, String digits) {
        char found = digits.indexOf(',') >= 0 ? ',' : digits.indexOf('.') >= 0 ? '.' : UNSETTLED;
        if (found == ',' && commaPartsColumns) {
            return lost(
                    cell,
                    "A comma stands inside a number, and commas also part this sheet's columns.",
                    "Write a decimal point, or part the columns by semicolons.");
        }
        if (found != UNSETTLED && mark != UNSETTLED && found != mark) {
            return lost(
                    cell,
                    "This number uses another decimal mark than the numbers before it.",
                    "Use one decimal mark throughout, and no thousands marks.");
        }
        mark = found == UNSETTLED ? mark : found;
        BigDecimal number = new BigDecimal(digits.replace(',', '.'));
        return number.abs().compareTo(GREATEST) > 0 ? notANumber(cell) : Optional.of(number);
    }

    private Optional<BigDecimal> notANumber(Cell cell) {
        return lost(
                cell,
                "This is not a number, or none that can be measured.",
                "Write digits with one decimal mark, and the unit in the heading; leave the cell empty if it was not measured.");
    }

    private Optional<BigDecimal> lost(Cell cell, String message, String remedy) {
        findings.add(Finding.lost(cell, message, remedy));
        return Optional.empty();
    }
}
