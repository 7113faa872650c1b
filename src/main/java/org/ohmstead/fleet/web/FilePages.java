package org.ohmstead.fleet.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.UUID;
import org.ohmstead.fleet.ImportReport;
import org.ohmstead.fleet.RegisterDrafts;
import org.ohmstead.fleet.RegisterFiles;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Bringing in a register file from the page: first what it would do, then doing it. */
@Controller
class FilePages {

    /** More rows than a person reads; the counts are always of all. */
    private static final int ROWS_SHOWN = 300;

    private final RegisterFiles files;
    private final RegisterDrafts drafts;

    FilePages(RegisterFiles files, RegisterDrafts drafts) {
        this.files = files;
        this.drafts = drafts;
    }

    @PostMapping("/register/preview")
    ModelAndView preview(@RequestParam String kind, @RequestParam MultipartFile file, RedirectAttributes redirect)
            throws IOException {
        if (file.isEmpty()) {
            redirect.addFlashAttribute("problem", "Choose a file with at least a line of headers.");
            return new ModelAndView("redirect:/register#files");
        }
        byte[] content = file.getBytes();
        ImportReport report = files.preview(kind, new ByteArrayInputStream(content));
        ModelAndView page = page(report);
        if (report.flaws().isEmpty() && !report.changes().isEmpty()) {
            page.addObject("draft", drafts.keep(kind, content));
        }
        return page;
    }

    @PostMapping("/register/bring-in")
    ModelAndView bringIn(@RequestParam UUID draft, RedirectAttributes redirect) throws IOException {
        RegisterDrafts.Draft kept = drafts.take(draft);
        try {
            ImportReport report = files.bringIn(kept.kind(), new ByteArrayInputStream(kept.content()));
            redirect.addFlashAttribute("notice", "Brought in " + kept.kind() + ".csv: " + report.summary() + ".");
            return new ModelAndView("redirect:/register");
        } catch (Refused e) {
            // the register changed between preview and now; show why it no longer fits
            return page(files.preview(kept.kind(), new ByteArrayInputStream(kept.content())));
        }
    }

    private static ModelAndView page(ImportReport report) {
        return new ModelAndView("register/preview")
                .addObject("report", report)
                .addObject("rows", report.changes().stream().limit(ROWS_SHOWN).toList())
                .addObject("flaws", report.flaws().stream().limit(ROWS_SHOWN).toList());
    }
}
