package org.ohmstead.reports.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.ohmstead.reports.ReportForm;
import org.ohmstead.reports.RoundFiles;
import org.ohmstead.reports.render.PdfForm;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.springframework.web.util.UriComponentsBuilder;

/** A round's pack as files. */
@RestController
class RoundFileResource {

    private final RoundFiles files;

    /** By which people reach the service; without it, the address of whoever asks. */
    private final @Nullable URI address;

    RoundFileResource(RoundFiles files, @Value("${ohmstead.address:#{null}}") @Nullable URI address) {
        this.files = files;
        this.address = address;
    }

    /** Paper and prefilled survey sheets. */
    @GetMapping("/api/rounds/{id}/pack.zip")
    void pack(@PathVariable long id, HttpServletResponse response) throws IOException {
        Downloads.begin(response, ReportForm.ZIP, files.name(id) + ".zip");
        files.write(id, this::walkOf, response.getOutputStream());
    }

    /** The paper alone. */
    @GetMapping("/api/rounds/{id}/pack.pdf")
    void paper(@PathVariable long id, HttpServletResponse response) throws IOException {
        Downloads.begin(response, ReportForm.PDF, files.name(id) + ".pdf");
        PdfForm.write(files.paper(id, this::walkOf), response.getOutputStream());
    }

    private String walkOf(long stringId) {
        UriComponentsBuilder base = address == null
                ? ServletUriComponentsBuilder.fromCurrentContextPath()
                : UriComponentsBuilder.fromUri(address);
        return base.pathSegment("strings", String.valueOf(stringId), "walk")
                .build()
                .toUriString();
    }
}
