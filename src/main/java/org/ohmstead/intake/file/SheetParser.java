package org.ohmstead.intake.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.OhmicKind;

/** Takes the lines of one sheet after its heading: first the facts, then the column titles, then the readings. */
public final class SheetParser {

    private final int headingLine;
    private final String whereToAdd;
    private final Findings findings = new Findings();
    private final NumberText numbers;
    private final FactsReader facts;
    private List<Column> columns = List.of();
    private @Nullable RowsReader rows;

    SheetParser(int headingLine, boolean commaPartsColumns) {
        this(headingLine, commaPartsColumns, "");
    }

    /** @param whereToAdd what to do where something needed is missing; empty to show the line that a sheet would have */
    public SheetParser(int headingLine, boolean commaPartsColumns, String whereToAdd) {
        this.headingLine = headingLine;
        this.whereToAdd = whereToAdd;
        this.numbers = new NumberText(commaPartsColumns, findings);
        this.facts = new FactsReader(numbers, findings);
    }

    public void accept(Row row) {
        RowsReader readings = rows;
        if (readings != null) {
            readings.accept(row);
        } else if (Spelling.plain(row.cell(1).text()).equals(ColumnsReader.FIRST_TITLE)) {
            columns = new ColumnsReader(findings).read(row);
            rows = new RowsReader(columns, numbers, findings);
        } else {
            facts.accept(row);
        }
    }

    public SurveySheet finish() {
        SheetFacts read = facts.facts();
        RowsReader readings = rows;
        require(read.takenAt() != null, "the time its readings were taken at", "taken at,2026-11-18T09:42");
        require(read.ohmicKind() != null, "the kind of its ohmic values", "ohmic kind,impedance");
        require(readings != null && !readings.rows().isEmpty(), "readings", "position,jar mΩ,jar V,link µΩ");
        requireFittingUnit(read.ohmicKind());
        return new SurveySheet(
                headingLine,
                read,
                facts.lines(),
                readings == null ? Map.of() : readings.columnNumbers(),
                readings == null ? 0 : readings.strapColumns(),
                readings == null ? List.of() : readings.rows(),
                findings.all());
    }

    private void require(boolean there, String what, String example) {
        if (!there) {
            String remedy = whereToAdd.isEmpty() ? "Add a line such as: " + example : whereToAdd;
            findings.add(Finding.unreadable(
                    Flaw.ofLine(headingLine, "The sheet that begins here lacks " + what + ".", remedy)));
        }
    }

    /** Ohms never become siemens or the other way round: the kind and the unit of the column have to agree. */
    private void requireFittingUnit(@Nullable OhmicKind kind) {
        Optional<Column> ohmic = columns.stream()
                .filter(column -> column.kind() == ColumnKind.JAR_OHMIC)
                .findFirst();
        if (kind == null || ohmic.isEmpty()) {
            return;
        }
        if ((kind == OhmicKind.CONDUCTANCE) != (ohmic.get().kept() == Unit.SIEMENS)) {
            findings.add(Finding.unreadable(Flaw.ofLine(
                    headingLine,
                    "The sheet says " + kind.words() + ", but its jar column is not in " + kind.unit() + ".",
                    "Correct the kind or the column's unit; the two are not convertible into each other.")));
        }
    }
}
