package org.ohmstead.intake.map;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.Findings;
import org.ohmstead.intake.file.Unit;

/** Rewrites numbers as a survey sheet has them: point, no thousands marks, no unit, in the unit they are kept in. */
final class MapNumbers {

    private static final Pattern WITH_UNIT =
            Pattern.compile("([+\\-−]?[0-9.,' \\u00a0\\u202f]*[0-9](?:[eE][+-]?\\d{1,2})?)\\s*([^0-9\\s].*)?");

    private final Pattern number;
    private final String decimalMark;
    private final String thousandsMark;
    private final Findings findings;

    MapNumbers(ColumnMap map, Findings findings) {
        this.decimalMark = map.decimalMark();
        this.thousandsMark = map.thousandsMark();
        this.findings = findings;
        String whole = thousandsMark.isEmpty()
                ? "\\d{1,15}"
                : "(?:\\d{1,15}|\\d{1,3}(?:" + Pattern.quote(thousandsMark) + "\\d{3}){1,4})";
        number = Pattern.compile(
                "[+-]?" + whole + "(?:" + Pattern.quote(decimalMark) + "\\d{1,15})?(?:[eE][+-]?\\d{1,2})?");
    }

    /**
     * The number in the unit it is kept in; the cell as it is where it holds no digits (missing, over range).
     *
     * @param written unit of the column, if known
     * @param kept in which unit to keep what is written in another
     */
    Optional<Kept> read(Cell cell, Optional<Unit> written, Function<Unit, Unit> kept) {
        Matcher parts = WITH_UNIT.matcher(cell.text());
        if (!parts.matches()) {
            return written.map(unit -> new Kept(cell, kept.apply(unit)));
        }
        String suffix = parts.group(2);
        Optional<Unit> unit = suffix == null ? written : Unit.named(suffix);
        String digits = parts.group(1).replace('−', '-').trim();
        if (unit.isEmpty()) {
            return lost(cell, "Neither the column map nor this cell says the unit.", "Name the unit in the map.");
        }
        Unit target = kept.apply(unit.get());
        if (target.quantity() != unit.get().quantity()
                || !number.matcher(digits).matches()) {
            return lost(
                    cell,
                    "This is not a number of this column as the column map says it is written.",
                    "Correct the cell, or the decimal mark, thousands mark or unit of the map.");
        }
        String plain = digits.replace(thousandsMark.isEmpty() ? "\u0000" : thousandsMark, "")
                .replace(decimalMark, ".");
        double value = unit.get().to(target, new BigDecimal(plain));
        return Optional.of(new Kept(cell.saying(BigDecimal.valueOf(value).toPlainString()), target));
    }

    /** A cell and the unit its number is in now. */
    record Kept(Cell cell, Unit unit) {}

    private Optional<Kept> lost(Cell cell, String message, String remedy) {
        findings.add(Finding.lost(cell, message, remedy));
        return Optional.empty();
    }
}
