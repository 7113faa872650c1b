package org.ohmstead.capacity.model;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;

/** Reads the rows of one discharge record and collects what is wrong, each with line and column. */
final class DischargeRows {

    private static final int MOST_FLAWS = 50;
    private static final int MOST_ROWS = 50_000;
    private static final Pattern JAR = Pattern.compile("jar_([1-9][0-9]{0,3})");
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,9}(\\.[0-9]{1,20})?");
    private static final List<String> NEEDED = List.of("minutes", "amps", "string_volts");
    private static final double MOST = 100_000;

    private final int positions;
    private final boolean decimalCommas;
    private final List<Flaw> flaws = new ArrayList<>();
    private final Map<String, Integer> columns = new HashMap<>();
    private final Map<Integer, Integer> jarColumns = new HashMap<>();
    private final List<double[]> rows = new ArrayList<>();
    private final List<double[]> jars = new ArrayList<>();
    private double before = Double.NEGATIVE_INFINITY;

    DischargeRows(int positions, boolean decimalCommas) {
        this.positions = positions;
        this.decimalCommas = decimalCommas;
    }

    Partial<DischargeRecord> read(Iterator<CsvRecord> records) {
        if (!records.hasNext()) {
            flaws.add(Flaw.ofFile("The file is empty.", "Start it with the line minutes,amps,string_volts."));
            return result();
        }
        headers(records.next());
        while (flaws.isEmpty() && records.hasNext() && rows.size() <= MOST_ROWS) {
            readOn(records);
        }
        if (flaws.isEmpty() && rows.size() < 2) {
            flaws.add(Flaw.ofFile("There are fewer than two rows below the headers.", "Hand in the whole record."));
        }
        if (rows.size() > MOST_ROWS) {
            flaws.add(Flaw.ofFile("There are more than 50,000 rows.", "Record less often; a row a minute will do."));
        }
        return result();
    }

    /** As long as what is wrong can still be listed. */
    private void readOn(Iterator<CsvRecord> records) {
        while (records.hasNext() && flaws.size() < MOST_FLAWS && rows.size() <= MOST_ROWS) {
            row(records.next());
        }
    }

    private void headers(CsvRecord record) {
        int line = (int) record.getStartingLineNumber();
        for (int i = 0; i < record.getFieldCount(); i++) {
            header(line, i, record.getField(i).strip().toLowerCase(Locale.ROOT));
        }
        NEEDED.stream()
                .filter(name -> !columns.containsKey(name))
                .forEach(name -> flaws.add(Flaw.ofLine(
                        line,
                        "There is no column " + name + ".",
                        "Name the columns minutes, amps, string_volts and, for jars, jar_1 to jar_" + positions
                                + ".")));
    }

    private void header(int line, int index, String name) {
        Matcher jar = JAR.matcher(name);
        boolean known = NEEDED.contains(name) || jar.matches();
        if (!known) {
            flaws.add(new Flaw(
                    line,
                    index + 1,
                    name,
                    "There is no such column.",
                    "Columns are minutes, amps, string_volts and jar_1 to jar_" + positions + "; remove others."));
        } else if (columns.put(name, index) != null) {
            flaws.add(new Flaw(line, index + 1, name, "The column stands there twice.", "Remove one of them."));
        } else if (!NEEDED.contains(name)) {
            int position = Integer.parseInt(jar.group(1));
            jarColumns.put(position, index);
            if (position > positions) {
                flaws.add(new Flaw(
                        line,
                        index + 1,
                        name,
                        "The string has " + positions + " jars.",
                        "Remove the column, or check that this is the record of this string."));
            }
        }
    }

    private void row(CsvRecord record) {
        if (record.getFields().stream().allMatch(String::isBlank)) {
            return;
        }
        int line = (int) record.getStartingLineNumber();
        double minute = number(record, line, columns.get("minutes"));
        double amps = number(record, line, columns.get("amps"));
        double volts = number(record, line, columns.get("string_volts"));
        if (Double.isNaN(minute)) {
            flaws.add(Flaw.ofLine(line, "The row has no minutes.", "Give the minutes since the record began."));
        } else if (minute <= before) {
            flaws.add(new Flaw(
                    line,
                    columns.getOrDefault("minutes", 0) + 1,
                    Words.plain(minute),
                    "Time does not go on: the row before has " + Words.plain(before) + " min.",
                    "Sort the rows by time and remove doubled ones."));
        }
        before = Double.isNaN(minute) ? before : minute;
        double[] jar = new double[jarColumns.isEmpty() ? 0 : positions];
        for (int i = 0; i < jar.length; i++) {
            jar[i] = number(record, line, jarColumns.get(i + 1));
        }
        rows.add(new double[] {minute, amps, volts});
        jars.add(jar);
    }

    /** NaN for an empty or missing cell, and for one that is no number, which is a flaw. */
    private double number(CsvRecord record, int line, @Nullable Integer column) {
        if (column == null || column >= record.getFieldCount()) {
            return Double.NaN;
        }
        String text = record.getField(column).strip();
        String plain = decimalCommas ? text.replace(',', '.') : text;
        if (plain.isEmpty()) {
            return Double.NaN;
        }
        if (!NUMBER.matcher(plain).matches() || Math.abs(Double.parseDouble(plain)) > MOST) {
            flaws.add(new Flaw(
                    line,
                    column + 1,
                    text,
                    "That is no number from −100000 to 100000.",
                    decimalCommas
                            ? "Write it as 2.05 or 2,05; leave the cell empty where nothing was read."
                            : "Write it as 2.05; leave the cell empty where nothing was read."));
            return Double.NaN;
        }
        return Double.parseDouble(plain);
    }

    private Partial<DischargeRecord> result() {
        if (!flaws.isEmpty()) {
            return new Partial<>(List.of(), flaws);
        }
        return new Partial<>(
                List.of(new DischargeRecord(
                        column(0),
                        column(1),
                        column(2),
                        jarColumns.isEmpty() ? new double[0][] : jars.toArray(double[][]::new))),
                List.of());
    }

    private double[] column(int index) {
        return rows.stream().mapToDouble(row -> row[index]).toArray();
    }
}
