package org.ohmstead.intake.file;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Flaw;

/** Takes the rows of a file, whatever its form, and cuts them into survey sheets, each with its own heading. */
final class SheetSplitter implements RowSink {

    private final boolean commaPartsColumns;
    private final Consumer<SurveySheet> sheets;
    private final Findings findings;
    private @Nullable SheetParser sheet;
    private String worksheet = "";
    private String passedOver = "";
    private int sheetCount;
    private boolean givenUp;

    SheetSplitter(boolean commaPartsColumns, Consumer<SurveySheet> sheets, Findings findings) {
        this.commaPartsColumns = commaPartsColumns;
        this.sheets = sheets;
        this.findings = findings;
    }

    @Override
    public boolean accept(Row row) {
        if (row.isBlank() || row.isComment()) {
            return true;
        }
        if (!row.sheet().equals(worksheet)) {
            finishSheet();
            worksheet = row.sheet();
        }
        if (Heading.isHeading(row)) {
            finishSheet();
            begin(row);
            return !givenUp;
        }
        SheetParser current = sheet;
        if (current != null) {
            current.accept(row);
        } else if (row.sheet().isEmpty()) {
            giveUp(row.cell(1).flaw("The file does not begin with a survey sheet's heading.", beginWith()));
        } else {
            passOver(row);
        }
        return !givenUp;
    }

    int finish() {
        finishSheet();
        if (sheetCount == 0 && !givenUp && findings.isReadable()) {
            giveUp(Flaw.ofFile("The file holds no survey sheet.", beginWith()));
        }
        return sheetCount;
    }

    /** Other worksheets of a workbook are somebody's own business. */
    private void passOver(Row row) {
        if (!passedOver.equals(row.sheet())) {
            passedOver = row.sheet();
            findings.add(Finding.noted(
                    row.cell(1),
                    "This worksheet does not begin with a survey sheet's heading and is passed over.",
                    beginWith()));
        }
    }

    private void begin(Row heading) {
        if (Heading.isKnownVersion(heading)) {
            sheet = new SheetParser(heading.line(), commaPartsColumns);
        } else {
            giveUp(heading.cell(2)
                    .flaw(
                            "This version of the survey sheet is not known here.",
                            "Known is version 1: " + Heading.EXAMPLE));
        }
    }

    private void finishSheet() {
        SheetParser complete = sheet;
        if (complete != null) {
            sheetCount++;
            sheets.accept(complete.finish());
            sheet = null;
        }
    }

    private void giveUp(Flaw flaw) {
        givenUp = true;
        findings.add(Finding.unreadable(flaw));
    }

    private static String beginWith() {
        return "Begin each sheet with the line: " + Heading.EXAMPLE;
    }
}
