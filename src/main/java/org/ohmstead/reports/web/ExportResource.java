package org.ohmstead.reports.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.reports.ExportView;
import org.ohmstead.reports.ReportExports;
import org.ohmstead.reports.ReportForm;
import org.ohmstead.reports.ReportKind;
import org.ohmstead.reports.ReportWish;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Files made in the background: asked for, watched, fetched. */
@RestController
@RequestMapping("/api/exports")
class ExportResource {

    private final ReportExports exports;

    ExportResource(ReportExports exports) {
        this.exports = exports;
    }

    /** @param form csv, xlsx, pdf or, of compliance, zip */
    record Order(
            String report,
            String form,
            @Nullable String area,
            @Nullable Long id,
            @Nullable String quarter) {}

    /** Answers at once; the address of what becomes of it is in the answer's head. */
    @PostMapping
    ResponseEntity<ExportView> ask(@RequestBody Order order) {
        ReportWish wish = new ReportWish(ReportKind.of(order.report()), order.area(), order.id(), order.quarter());
        UUID id = exports.ask(wish, ReportForm.of(order.form()));
        return ResponseEntity.accepted()
                .location(URI.create("/api/exports/" + id))
                .body(exports.export(id));
    }

    @GetMapping
    List<ExportView> recent() {
        return exports.recent();
    }

    @GetMapping("/{id}")
    ExportView export(@PathVariable UUID id) {
        return exports.export(id);
    }

    @GetMapping("/{id}/file")
    void file(@PathVariable UUID id, HttpServletResponse response) throws IOException {
        ReportExports.File file = exports.file(id);
        Downloads.begin(response, file.form(), file.name());
        response.setContentLength(file.content().length);
        response.getOutputStream().write(file.content());
    }
}
