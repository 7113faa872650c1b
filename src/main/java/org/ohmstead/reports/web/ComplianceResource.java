package org.ohmstead.reports.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;
import org.ohmstead.reports.Compliance;
import org.ohmstead.reports.ComplianceSummary;
import org.ohmstead.reports.EvidencePack;
import org.ohmstead.reports.Quarter;
import org.ohmstead.reports.render.CsvForm;
import org.ohmstead.reports.render.PdfForm;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.XlsxForm;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** A quarter's compliance summary as JSON and as files, its signature and its evidence. */
@RestController
@RequestMapping("/api/compliance/{quarter}")
class ComplianceResource {

    private static final Map<String, String> TYPES = Map.of(
            "csv", "text/csv;charset=UTF-8;header=present",
            "xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            "pdf", "application/pdf",
            "zip", "application/zip");

    private final Compliance compliance;
    private final EvidencePack evidence;

    ComplianceResource(Compliance compliance, EvidencePack evidence) {
        this.compliance = compliance;
        this.evidence = evidence;
    }

    /** @param sha256 of the summary that was read, as the summary gives it */
    record Signature(
            @Nullable String area, String sha256, @Nullable String note) {}

    @GetMapping
    ComplianceSummary summary(@PathVariable String quarter, @RequestParam(required = false) @Nullable String area) {
        return compliance.summary(Quarter.parse(quarter), area);
    }

    @PostMapping("/sign-off")
    ComplianceSummary sign(@PathVariable String quarter, @RequestBody Signature signature) {
        String note = Optional.ofNullable(signature.note()).orElse("");
        return compliance.sign(Quarter.parse(quarter), signature.area(), signature.sha256(), note);
    }

    /** @param form csv (the lines), xlsx, pdf, or zip: all three with the surveys' own files and their sums */
    @GetMapping("/file.{form}")
    void file(
            @PathVariable String quarter,
            @PathVariable String form,
            @RequestParam(required = false) @Nullable String area,
            HttpServletResponse response)
            throws IOException {
        String type = Optional.ofNullable(TYPES.get(form))
                .orElseThrow(() -> new Refused("There is no form \"" + form + "\". Forms are csv, xlsx, pdf and zip."));
        ComplianceSummary summary = compliance.summary(Quarter.parse(quarter), area);
        response.setContentType(type);
        response.setHeader("Content-Disposition", "attachment; filename=\"" + summary.fileName() + "." + form + "\"");
        write(summary, form, response);
    }

    private void write(ComplianceSummary summary, String form, HttpServletResponse response) throws IOException {
        Report report = compliance.report(summary);
        switch (form) {
            case "csv" -> CsvForm.write(report.section("Lines"), response.getOutputStream());
            case "xlsx" -> XlsxForm.write(report, response.getOutputStream());
            case "pdf" -> PdfForm.write(compliance.printed(summary), response.getOutputStream());
            default -> evidence.write(summary, response.getOutputStream());
        }
    }
}
