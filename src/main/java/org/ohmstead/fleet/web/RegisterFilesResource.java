package org.ohmstead.fleet.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import org.ohmstead.fleet.ImportReport;
import org.ohmstead.fleet.RegisterFiles;
import org.ohmstead.kernel.NotFound;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The register as CSV files, for pages and programs. */
@RestController
class RegisterFilesResource {

    private final RegisterFiles files;

    RegisterFilesResource(RegisterFiles files) {
        this.files = files;
    }

    @GetMapping("/api/register/{kind}.csv")
    void export(@PathVariable String kind, HttpServletResponse response) throws IOException {
        if (!files.kinds().contains(kind)) {
            throw new NotFound(
                    "There is no register file " + kind + ".csv. Files are: " + String.join(", ", files.kinds()) + ".");
        }
        response.setContentType("text/csv;charset=UTF-8;header=present");
        response.setHeader("Content-Disposition", "attachment; filename=\"" + kind + ".csv\"");
        files.write(kind, response.getOutputStream());
    }

    @GetMapping("/api/register.zip")
    void exportAll(HttpServletResponse response) throws IOException {
        response.setContentType("application/zip");
        response.setHeader("Content-Disposition", "attachment; filename=\"register.zip\"");
        files.writeAll(response.getOutputStream());
    }

    /** @param preview whether only to say what the file would do; a preview also answers with the file's flaws */
    @PostMapping("/api/register/{kind}.csv")
    ImportReport bringIn(
            @PathVariable String kind, @RequestParam(defaultValue = "false") boolean preview, InputStream body)
            throws IOException {
        return preview ? files.preview(kind, body) : files.bringIn(kind, body);
    }
}
