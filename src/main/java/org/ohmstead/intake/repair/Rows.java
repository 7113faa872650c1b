package org.ohmstead.intake.repair;

import java.util.Arrays;
import java.util.List;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SurveySheet;

/** Rows and sheets with one thing changed. */
final class Rows {

    private Rows() {}

    static ReadingRow at(ReadingRow row, int position) {
        return new ReadingRow(
                row.line(), position, row.ohmic(), row.volts(), row.celsius(), row.gravity(), row.linkMicroohms());
    }

    /** The jar's own values, without the link after it. */
    static ReadingRow jarOnly(ReadingRow row, int position) {
        double[] links = row.linkMicroohms().clone();
        Arrays.fill(links, Double.NaN);
        return joined(at(row, position), links);
    }

    static ReadingRow linkOnly(ReadingRow row, int position) {
        return new ReadingRow(
                row.line(), position, Double.NaN, Double.NaN, Double.NaN, Double.NaN, row.linkMicroohms());
    }

    static ReadingRow joined(ReadingRow jar, double[] links) {
        return new ReadingRow(
                jar.line(), jar.position(), jar.ohmic(), jar.volts(), jar.celsius(), jar.gravity(), links);
    }

    static boolean hasLink(ReadingRow row) {
        return Arrays.stream(row.linkMicroohms()).anyMatch(value -> !Double.isNaN(value));
    }

    static SurveySheet with(SurveySheet sheet, List<ReadingRow> rows) {
        return with(sheet, sheet.facts(), rows, sheet.findings());
    }

    static SurveySheet with(SurveySheet sheet, SheetFacts facts) {
        return with(sheet, facts, sheet.rows(), sheet.findings());
    }

    /** Without what the reader said of that cell. */
    static SurveySheet without(SurveySheet sheet, int line, int column) {
        List<Finding> others = sheet.findings().stream()
                .filter(finding ->
                        finding.flaw().line() != line || finding.flaw().column() != column)
                .toList();
        return with(sheet, sheet.facts(), sheet.rows(), others);
    }

    private static SurveySheet with(
            SurveySheet sheet, SheetFacts facts, List<ReadingRow> rows, List<Finding> findings) {
        return new SurveySheet(
                sheet.line(), facts, sheet.factLines(), sheet.columns(), sheet.strapColumns(), rows, findings);
    }
}
