package org.ohmstead.reports.render;

import java.util.List;

/** A report as XHTML, to be set on paper. */
final class Markup {

    private static final String STYLE = """
            @page { size: A4 landscape; margin: 16mm 14mm 16mm 14mm;
              @bottom-left { content: element(foot); }
              @bottom-right { content: counter(page) " of " counter(pages); font: 8pt Sans; color: #333; } }
            body { font: 8.5pt/1.3 Sans; color: #000; }
            .foot { position: running(foot); font-size: 8pt; color: #333; }
            h1 { font: 600 19pt/1.15 Serif; margin: 0 0 4mm; }
            h2 { font: 600 13pt/1.2 Serif; margin: 7mm 0 1mm; page-break-after: avoid; }
            p { margin: 0 0 2mm; }
            table { width: 100%; border-collapse: collapse; table-layout: fixed; -fs-table-paginate: paginate; }
            table.facts { width: 78%; border-top: 0.8pt solid #000; border-bottom: 0.8pt solid #000; }
            table.facts td, table.facts th { padding: 0.9mm 2mm 0.9mm 0; }
            th { text-align: left; font-weight: 600; vertical-align: bottom; }
            thead th { border-bottom: 0.8pt solid #000; padding: 1mm 1.5mm 1mm 0; }
            td { vertical-align: top; padding: 0.8mm 1.5mm 0.8mm 0; border-bottom: 0.3pt solid #999; }
            table.facts td, table.facts th { border-bottom: 0; vertical-align: top; }
            tr { page-break-inside: avoid; }
            .n { text-align: right; }
            .note { margin-top: 6mm; font-style: italic; }
            """;

    private Markup() {}

    static String of(Report report) {
        StringBuilder page = new StringBuilder("<html lang=\"en\"><head><title>")
                .append(safe(report.title()))
                .append("</title><meta name=\"subject\" content=\"")
                .append(safe(report.title()))
                .append("\"/><style>")
                .append(STYLE)
                .append("</style></head><body><div class=\"foot\">Ohmstead · ")
                .append(safe(report.title()))
                .append("</div><h1>")
                .append(safe(report.title()))
                .append("</h1>");
        facts(report, page);
        report.sections().forEach(section -> section(section, page));
        return page.append("<p class=\"note\">")
                .append(safe(report.note()))
                .append("</p></body></html>")
                .toString();
    }

    private static void facts(Report report, StringBuilder page) {
        page.append(
                "<table class=\"facts\"><colgroup><col style=\"width:22%\"/><col style=\"width:78%\"/></colgroup><tbody>");
        report.facts()
                .forEach(fact -> page.append("<tr><th scope=\"row\">")
                        .append(safe(fact.name()))
                        .append("</th><td>")
                        .append(safe(fact.words()))
                        .append("</td></tr>"));
        page.append("</tbody></table>");
    }

    private static void section(Section section, StringBuilder page) {
        page.append("<h2>")
                .append(safe(section.name()))
                .append("</h2><p>")
                .append(safe(section.sentence()))
                .append("</p>");
        if (section.rows().isEmpty()) {
            return;
        }
        page.append("<table><colgroup>");
        int whole = section.columns().stream().mapToInt(Section.Column::share).sum();
        section.columns()
                .forEach(column -> page.append("<col style=\"width:")
                        .append(100.0 * column.share() / whole)
                        .append("%\"/>"));
        page.append("</colgroup><thead><tr>");
        section.columns()
                .forEach(column -> page.append("<th scope=\"col\"")
                        .append(column.numeric() ? " class=\"n\">" : ">")
                        .append(safe(column.title()))
                        .append("</th>"));
        page.append("</tr></thead><tbody>");
        section.rows().forEach(row -> row(section.columns(), row, page));
        page.append("</tbody></table>");
    }

    private static void row(List<Section.Column> columns, List<Cell> row, StringBuilder page) {
        page.append("<tr>");
        for (int i = 0; i < row.size(); i++) {
            page.append(columns.get(i).numeric() ? "<td class=\"n\">" : "<td>")
                    .append(safe(row.get(i).shown()))
                    .append("</td>");
        }
        page.append("</tr>");
    }

    private static String safe(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F]", " ");
    }
}
