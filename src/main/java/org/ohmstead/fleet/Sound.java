package org.ohmstead.fleet;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.TextRow;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;
import org.ohmstead.kernel.Refused;

/** What all entries have in common, whatever they describe: the rules of their sheet. */
final class Sound {

    private Sound() {}

    /**
     * The entry in its normal form.
     *
     * @throws Refused with a flaw for every cell that breaks a rule
     */
    static <E> E entry(Sheet<E> sheet, E entry) {
        Partial<E> checked = sheet.check(entry);
        if (!checked.isFlawless()) {
            throw new Refused("This " + sheet.one() + " can't be taken as it is.", checked.flaws());
        }
        return checked.rows().get(0);
    }

    /** The same entry with another text in one cell. */
    static <E> E with(Sheet<E> sheet, E entry, String header, String text) {
        Map<String, String> cells = sheet.cells(entry);
        cells.put(header, text);
        Partial<E> read = sheet.read(new TextRow(0, cells));
        if (!read.isFlawless()) {
            throw new Refused("This " + sheet.one() + " can't be taken as it is.", read.flaws());
        }
        return read.rows().get(0);
    }

    /** @throws Refused when a program left the day out */
    static LocalDate day(@Nullable LocalDate day) {
        if (day == null) {
            throw new Refused("The day is missing. Write a date such as 2024-03-31.");
        }
        return day;
    }

    /** A refusal of one cell; its column is the sheet's. */
    static Refused refusal(Sheet<?> sheet, String header, String value, String message, String remedy) {
        Flaw flaw = new Flaw(0, sheet.columnNumber(header), value, message, remedy);
        return new Refused("This " + sheet.one() + " can't be taken as it is.", List.of(flaw));
    }

    /** Old and new text of every column that differs. */
    static <E> Map<String, List<String>> changes(Sheet<E> sheet, E before, E after) {
        Map<String, String> old = sheet.cells(before);
        Map<String, List<String>> changes = new LinkedHashMap<>();
        sheet.cells(after).forEach((header, text) -> {
            if (!text.equals(old.get(header))) {
                changes.put(header, List.of(String.valueOf(old.get(header)), text));
            }
        });
        return changes;
    }
}
