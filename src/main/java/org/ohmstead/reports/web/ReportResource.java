package org.ohmstead.reports.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.reports.MadeReport;
import org.ohmstead.reports.ReportDesk;
import org.ohmstead.reports.ReportForm;
import org.ohmstead.reports.ReportKind;
import org.ohmstead.reports.ReportWish;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Every report as a file. */
@RestController
@RequestMapping("/api/reports")
class ReportResource {

    private final ReportDesk desk;

    ReportResource(ReportDesk desk) {
        this.desk = desk;
    }

    /** @param scope what it speaks of: AREA, QUARTER, STRING or SURVEY */
    record Listed(String code, String title, String answers, ReportKind.Scope scope) {}

    @GetMapping
    List<Listed> all() {
        return desk.kinds().stream()
                .map(kind -> new Listed(kind.code(), kind.title(), kind.answers(), kind.scope()))
                .toList();
    }

    /**
     * @param form csv (its main table), xlsx or pdf
     * @param area code; all in reach when left out
     * @param id of the string or survey, for reports of one
     * @param quarter as 2026-Q3, for reports of one; the last finished one when left out
     */
    @GetMapping("/{report}/file.{form}")
    void file(
            @PathVariable String report,
            @PathVariable String form,
            @RequestParam(required = false) @Nullable String area,
            @RequestParam(required = false) @Nullable Long id,
            @RequestParam(required = false) @Nullable String quarter,
            HttpServletResponse response)
            throws IOException {
        ReportForm wanted = ReportForm.of(form);
        String scope = area == null || area.isEmpty() ? null : area;
        MadeReport made = desk.make(new ReportWish(ReportKind.of(report), scope, id, quarter));
        Downloads.begin(response, wanted, made.fileName(wanted));
        made.write(wanted, response.getOutputStream());
    }
}
