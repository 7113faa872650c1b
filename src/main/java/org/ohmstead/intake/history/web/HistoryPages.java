package org.ohmstead.intake.history.web;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.intake.history.FileOutcome;
import org.ohmstead.intake.history.Histories;
import org.ohmstead.intake.history.HistoryFile;
import org.ohmstead.intake.history.HistoryReceipt;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The pages on which histories are loaded and looked at. */
@Controller
class HistoryPages {

    private static final int LISTED = 200;

    private final Histories histories;
    private final HistoryBody body;
    private final Access access;

    HistoryPages(Histories histories, HistoryBody body, Access access) {
        this.histories = histories;
        this.body = body;
        this.access = access;
    }

    @GetMapping("/intake/history")
    String list(Model model) {
        model.addAttribute("loads", histories.recent());
        model.addAttribute("mayLoad", access.current().may(Permission.SETTLE_SURVEYS));
        return "intake/history";
    }

    /** Without a script: as large as any form's file may be. */
    @PostMapping("/intake/history")
    String load(@RequestParam("file") MultipartFile file, RedirectAttributes redirect) throws IOException {
        try (InputStream bytes = file.getInputStream()) {
            String name = Objects.requireNonNullElse(file.getOriginalFilename(), "history");
            HistoryReceipt receipt = body.receive(name, bytes, file.getSize());
            if (!receipt.isNew()) {
                redirect.addFlashAttribute("notice", "This very history came before; here is what became of it.");
            }
            return "redirect:/intake/history/" + receipt.load().id();
        } catch (Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
            return "redirect:/intake/history";
        }
    }

    @GetMapping("/intake/history/{id}")
    String progress(
            @PathVariable UUID id,
            @RequestParam(required = false) @Nullable FileOutcome outcome,
            @RequestParam(required = false, defaultValue = "0") int after,
            Model model) {
        List<HistoryFile> files = histories.files(id, outcome, after, LISTED + 1);
        boolean more = files.size() > LISTED;
        List<HistoryFile> shown = more ? files.subList(0, LISTED) : files;
        model.addAttribute("load", histories.load(id));
        model.addAttribute("outcome", outcome);
        model.addAttribute("outcomes", FileOutcome.values());
        model.addAttribute("files", shown);
        model.addAttribute("first", after == 0);
        model.addAttribute("next", more ? shown.get(LISTED - 1).number() : null);
        return "intake/history-load";
    }
}
