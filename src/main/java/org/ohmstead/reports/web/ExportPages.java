package org.ohmstead.reports.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.reports.ReportExports;
import org.ohmstead.reports.ReportForm;
import org.ohmstead.reports.ReportKind;
import org.ohmstead.reports.ReportSubscriptions;
import org.ohmstead.reports.ReportWish;
import org.ohmstead.reports.Rhythm;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Files that are made in the background, and reports that go out by e-mail. */
@Controller
class ExportPages {

    private final ReportExports exports;
    private final ReportSubscriptions subscriptions;

    ExportPages(ReportExports exports, ReportSubscriptions subscriptions) {
        this.exports = exports;
        this.subscriptions = subscriptions;
    }

    @PostMapping("/reports/exports")
    String ask(
            @RequestParam String report,
            @RequestParam String form,
            @RequestParam(defaultValue = "") String area,
            @RequestParam(required = false) @Nullable String quarter,
            RedirectAttributes redirect) {
        ReportWish wish = new ReportWish(ReportKind.of(report), area.isEmpty() ? null : area, null, quarter);
        try {
            return "redirect:/reports/exports/" + exports.ask(wish, ReportForm.of(form));
        } catch (Conflict | Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
            return "redirect:/reports";
        }
    }

    @GetMapping("/reports/exports/{id}")
    String export(@PathVariable UUID id, Model model) {
        model.addAttribute("export", exports.export(id));
        return "reports/export";
    }

    @PostMapping("/reports/subscriptions")
    String subscribe(
            @RequestParam String email,
            @RequestParam String report,
            @RequestParam String form,
            @RequestParam(defaultValue = "") String area,
            @RequestParam Rhythm rhythm,
            RedirectAttributes redirect) {
        try {
            subscriptions.add(email, ReportKind.of(report), ReportForm.of(form), area.isEmpty() ? null : area, rhythm);
            redirect.addFlashAttribute(
                    "notice", "You get it by e-mail " + rhythm.words() + ", the first one with the next post.");
        } catch (Conflict | Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/reports#by-mail";
    }

    @PostMapping("/reports/subscriptions/{id}/stop")
    String stop(@PathVariable long id, RedirectAttributes redirect) {
        subscriptions.stop(id);
        redirect.addFlashAttribute("notice", "It is not sent any more.");
        return "redirect:/reports#by-mail";
    }
}
