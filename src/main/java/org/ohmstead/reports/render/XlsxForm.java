package org.ohmstead.reports.render;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** A report as XLSX: its facts on the first sheet, each table on one of its own, cells typed. */
public final class XlsxForm {

    private static final double WIDTH_PER_SHARE = 1.6;
    private static final String DAY = "yyyy-mm-dd";

    private XlsxForm() {}

    public static void write(Report report, OutputStream out) {
        try {
            Path book = Files.createTempFile("report", ".xlsx");
            try {
                write(report, book);
                FixedZip.copy(book, report.asOf(), out);
            } finally {
                Files.delete(book);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Report report, Path book) throws IOException {
        try (OutputStream file = Files.newOutputStream(book);
                Workbook workbook = new Workbook(file, "Ohmstead", "1.0")) {
            facts(report, workbook.newWorksheet("About"));
            report.sections().forEach(section -> table(section, workbook.newWorksheet(section.name())));
        }
    }

    private static void facts(Report report, Worksheet sheet) {
        sheet.value(0, 0, report.title());
        sheet.style(0, 0).bold().fontSize(14).set();
        sheet.width(0, 28);
        sheet.width(1, 90);
        int row = 2;
        for (Report.Fact fact : report.facts()) {
            sheet.value(row, 0, fact.name());
            sheet.value(row, 1, fact.words());
            row++;
        }
        sheet.value(row + 1, 0, report.note());
    }

    private static void table(Section section, Worksheet sheet) {
        for (int column = 0; column < section.columns().size(); column++) {
            sheet.value(0, column, section.columns().get(column).title());
            sheet.style(0, column).bold().wrapText(true).set();
            sheet.width(
                    column,
                    Math.max(9, WIDTH_PER_SHARE * section.columns().get(column).share()));
        }
        sheet.freezePane(0, 1);
        for (int row = 0; row < section.rows().size(); row++) {
            cells(section.rows().get(row), row + 1, sheet);
        }
    }

    private static void cells(List<Cell> cells, int row, Worksheet sheet) {
        for (int column = 0; column < cells.size(); column++) {
            Cell cell = cells.get(column);
            if (cell instanceof Cell.Count count) {
                sheet.value(row, column, count.number());
            } else if (cell instanceof Cell.Day day) {
                sheet.value(row, column, day.date());
                sheet.style(row, column).format(DAY).set();
            } else if (cell instanceof Cell.Figure figure) {
                sheet.value(row, column, figure.number());
                sheet.style(row, column).format(decimals(figure.decimals())).set();
            } else if (cell != Cell.NONE) {
                sheet.value(row, column, cell.shown());
            }
        }
    }

    private static String decimals(int count) {
        return count == 0 ? "0" : "0." + "0".repeat(count);
    }
}
