package org.ohmstead.reports.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.ohmstead.reports.ReportForm;
import org.ohmstead.reports.RoundFiles;
import org.ohmstead.reports.render.PdfForm;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** A round's pack as files. */
@RestController
class RoundFileResource {

    private final RoundFiles files;

    RoundFileResource(RoundFiles files) {
        this.files = files;
    }

    /** Paper and prefilled survey sheets. */
    @GetMapping("/api/rounds/{id}/pack.zip")
    void pack(@PathVariable long id, HttpServletResponse response) throws IOException {
        Downloads.begin(response, ReportForm.ZIP, files.name(id) + ".zip");
        files.write(id, response.getOutputStream());
    }

    /** The paper alone. */
    @GetMapping("/api/rounds/{id}/pack.pdf")
    void paper(@PathVariable long id, HttpServletResponse response) throws IOException {
        Downloads.begin(response, ReportForm.PDF, files.name(id) + ".pdf");
        PdfForm.write(files.paper(id), response.getOutputStream());
    }
}
