package org.ohmstead.reports.web;

import jakarta.servlet.http.HttpServletResponse;
import org.ohmstead.reports.ReportForm;

/** How files are handed over: as attachments under a name of ours. */
final class Downloads {

    private Downloads() {}

    static void begin(HttpServletResponse response, ReportForm form, String fileName) {
        response.setContentType(form.mediaType());
        response.setHeader("Content-Disposition", "attachment; filename=\"" + fileName + "\"");
    }
}
