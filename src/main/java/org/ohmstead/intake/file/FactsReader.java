package org.ohmstead.intake.file;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;

/** Reads the upper part of a sheet, line by line. */
final class FactsReader {

    private static final Pattern EMPTY_END = Pattern.compile("(, )+$");

    private final NumberText numbers;
    private final Findings findings;
    private final Map<Fact, Cell> given = new EnumMap<>(Fact.class);
    private final Map<Fact, Double> measured = new EnumMap<>(Fact.class);

    FactsReader(NumberText numbers, Findings findings) {
        this.numbers = numbers;
        this.findings = findings;
    }

    void accept(Row row) {
        Cell key = row.cell(1);
        String plain = Spelling.plain(key.text());
        Optional<Fact> fact = Fact.startOf(plain);
        if (fact.isEmpty()) {
            unknown(key);
            return;
        }
        String rest = plain.substring(fact.get().key().length()).trim();
        take(fact.get(), rest, row);
    }

    private void take(Fact fact, String unit, Row row) {
        Unit kept = fact.kept();
        if (kept == null) {
            takeWords(fact, unit, row);
        } else {
            unitOf(row.cell(1), unit, kept).ifPresent(written -> takeNumber(fact, written, kept, row));
        }
    }

    private void takeWords(Fact fact, String rest, Row row) {
        if (!rest.isEmpty()) {
            unknown(row.cell(1));
            return;
        }
        Cell value = fact == Fact.NOTE || fact == Fact.TAKEN_BY ? joined(row) : single(row);
        if (isNews(fact, value)) {
            given.put(fact, value);
        }
    }

    private void takeNumber(Fact fact, Unit written, Unit kept, Row row) {
        Cell value = single(row);
        if (isNews(fact, value)) {
            given.put(fact, value);
            measured.put(fact, numbers.read(value, written, kept));
        }
    }

    private Optional<Unit> unitOf(Cell key, String words, Unit kept) {
        if (words.isEmpty() && kept == Unit.VOLT) {
            return Optional.of(Unit.VOLT);
        }
        Optional<Unit> unit = Unit.named(words).filter(named -> named.quantity() == kept.quantity());
        if (unit.isEmpty()) {
            findings.add(Finding.lost(
                    key,
                    words.isEmpty() ? "This key does not say its unit." : "This key has a unit that does not fit it.",
                    "Write one of: " + Unit.signsOf(kept.quantity()) + "."));
        }
        return unit;
    }

    private void unknown(Cell key) {
        findings.add(Finding.lost(
                key, "The upper part of a survey sheet has no such key.", "Use one of: " + Fact.choices() + "."));
    }

    /** Whether the value is there and is the first of its key; the same twice is noted, two different ones are found. */
    private boolean isNews(Fact fact, Cell value) {
        Cell before = given.get(fact);
        if (value.isEmpty() || before == null) {
            return !value.isEmpty();
        }
        if (before.text().equals(value.text())) {
            findings.add(Finding.noted(value, "This key stands twice with the same value.", "Leave one out."));
        } else {
            findings.add(Finding.lost(
                    value,
                    "This key stands twice with different values; line " + before.line() + " says \"" + before.text()
                            + "\".",
                    "Leave the wrong one out."));
        }
        return false;
    }

    private Cell single(Row row) {
        Cell more = row.firstFilledAfter(2);
        if (more != null) {
            findings.add(
                    Finding.lost(
                            more,
                            "A key has one value, and here is another.",
                            "If this is the rest of a number with a decimal comma, write a point or part the columns by semicolons."));
        }
        return row.cell(2);
    }

    /** Free text keeps the commas that cut it up. */
    private static Cell joined(Row row) {
        String text = row.cells().stream().skip(1).map(Cell::text).collect(Collectors.joining(", "));
        return row.cell(2).saying(EMPTY_END.matcher(text).replaceAll(""));
    }

    SheetFacts facts() {
        return new SheetFacts(
                text(Fact.SITE),
                text(Fact.STRING),
                takenAt(),
                text(Fact.TAKEN_BY),
                text(Fact.INSTRUMENT),
                calibrationDue(),
                ohmicKind(),
                number(Fact.OHMIC_FREQUENCY),
                number(Fact.AMBIENT),
                number(Fact.STRING_VOLTS),
                number(Fact.FLOAT_CURRENT),
                number(Fact.RIPPLE_CURRENT),
                number(Fact.RIPPLE_VOLTS),
                number(Fact.INJECTED_CURRENT),
                number(Fact.CLAMPED_CURRENT),
                onFloat(),
                text(Fact.NOTE));
    }

    /** The line of each fact that is given, by its key. */
    Map<String, Integer> lines() {
        return given.entrySet().stream()
                .collect(Collectors.toMap(
                        entry -> entry.getKey().key(), entry -> entry.getValue().line()));
    }

    private double number(Fact fact) {
        return measured.getOrDefault(fact, Double.NaN);
    }

    private String text(Fact fact) {
        Cell cell = given.get(fact);
        return cell == null ? "" : cell.text();
    }

    private @Nullable TakenAt takenAt() {
        Cell cell = given.get(Fact.TAKEN_AT);
        if (cell == null) {
            return null;
        }
        Optional<LocalDate> date = TimeText.date(cell.text());
        if (date.isPresent()) {
            findings.add(Finding.noted(
                    cell, "The time of day is not given; noon at the site is assumed.", "Write 2026-11-18T09:42."));
            return TimeText.noon(date.get());
        }
        return TimeText.time(cell.text())
                .orElseGet(() -> lost(cell, "This is not a time.", "Write year-month-day and time: 2026-11-18T09:42."));
    }

    private @Nullable LocalDate calibrationDue() {
        Cell cell = given.get(Fact.CALIBRATION_DUE);
        return cell == null
                ? null
                : TimeText.date(cell.text())
                        .orElseGet(() -> lost(cell, "This is not a date.", "Write year-month-day: 2027-03-01."));
    }

    private @Nullable OhmicKind ohmicKind() {
        Cell cell = given.get(Fact.OHMIC_KIND);
        return cell == null
                ? null
                : OhmicWord.read(cell.text())
                        .orElseGet(() -> lost(
                                cell, "This is not a kind of ohmic value.", "Use one of: " + OhmicWord.CHOICES + "."));
    }

    private boolean onFloat() {
        Cell cell = given.get(Fact.ON_FLOAT);
        String plain = cell == null ? "yes" : Spelling.plain(cell.text());
        if (cell != null && !plain.equals("yes") && !plain.equals("no")) {
            findings.add(Finding.lost(cell, "This is neither yes nor no; yes is assumed.", "Write yes or no."));
        }
        return !plain.equals("no");
    }

    private <T> @Nullable T lost(Cell cell, String message, String remedy) {
        findings.add(Finding.lost(cell, message, remedy));
        return null;
    }
}
