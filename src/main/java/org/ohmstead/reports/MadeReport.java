package org.ohmstead.reports;

import java.io.OutputStream;
import org.ohmstead.kernel.Refused;
import org.ohmstead.reports.render.CsvForm;
import org.ohmstead.reports.render.PdfForm;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.XlsxForm;

/**
 * A report with its contents, ready to be written in any form.
 *
 * @param full for CSV and XLSX
 * @param printed the same for paper, where it may have fewer columns
 * @param table name of the section that is the CSV
 * @param name of the file, without its suffix
 */
public record MadeReport(Report full, Report printed, String table, String name) {

    MadeReport(Report report, String table, String name) {
        this(report, report.withoutEmptyColumns(), table, name);
    }

    public String fileName(ReportForm form) {
        return name + "." + form.suffix();
    }

    public void write(ReportForm form, OutputStream out) {
        switch (form) {
            case CSV -> CsvForm.write(full.section(table), out);
            case XLSX -> XlsxForm.write(full, out);
            case PDF -> PdfForm.write(printed, out);
            case ZIP -> throw new Refused("Only a quarter's compliance comes as a pack of files.");
        }
    }
}
