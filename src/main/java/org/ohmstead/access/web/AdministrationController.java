package org.ohmstead.access.web;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.ohmstead.access.Administration;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Accounts and the audit trail. */
@Controller
class AdministrationController {

    private static final String BACK = "redirect:/administration";
    private static final int AUDIT_PAGE = 100;

    private final Administration administration;

    AdministrationController(Administration administration) {
        this.administration = administration;
    }

    @GetMapping("/administration")
    String people(Model model) {
        model.addAttribute("people", administration.people());
        model.addAttribute("areas", administration.areas());
        model.addAttribute("roles", Role.values());
        return "access/administration";
    }

    @GetMapping("/administration/audit")
    String audit(@RequestParam(defaultValue = "" + Long.MAX_VALUE) long before, Model model) {
        List<AuditTrail.Entry> entries = administration.auditBefore(before, AUDIT_PAGE);
        model.addAttribute("entries", entries);
        if (entries.size() == AUDIT_PAGE) {
            model.addAttribute("older", entries.get(AUDIT_PAGE - 1).id());
        }
        return "access/audit";
    }

    @PostMapping("/administration/people")
    String open(
            @RequestParam String username,
            @RequestParam String displayName,
            @RequestParam Role role,
            @RequestParam(defaultValue = "false") boolean everywhere,
            @RequestParam(defaultValue = "") Set<Long> areaIds,
            RedirectAttributes redirect) {
        NewPerson person = new NewPerson(username, displayName, role, reach(everywhere, areaIds));
        return withLink(() -> administration.open(person), username, redirect);
    }

    @PostMapping("/administration/people/{id}")
    String change(
            @PathVariable long id,
            @RequestParam String displayName,
            @RequestParam Role role,
            @RequestParam(defaultValue = "false") boolean everywhere,
            @RequestParam(defaultValue = "") Set<Long> areaIds,
            RedirectAttributes redirect) {
        administration.change(id, displayName, role, reach(everywhere, areaIds));
        redirect.addFlashAttribute("done", "The change is in force.");
        return BACK;
    }

    @PostMapping("/administration/people/{id}/link")
    String newLink(@PathVariable long id, @RequestParam String username, RedirectAttributes redirect) {
        return withLink(() -> administration.newLink(id), username, redirect);
    }

    @PostMapping("/administration/people/{id}/close")
    String close(@PathVariable long id, RedirectAttributes redirect) {
        try {
            administration.close(id);
            redirect.addFlashAttribute("done", "The account is closed; what it did stays in the audit trail.");
        } catch (Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return BACK;
    }

    @PostMapping("/administration/people/{id}/reopen")
    String reopen(@PathVariable long id, RedirectAttributes redirect) {
        administration.reopen(id);
        redirect.addFlashAttribute("done", "The account is open again.");
        return BACK;
    }

    private static String withLink(Supplier<String> act, String username, RedirectAttributes redirect) {
        try {
            redirect.addFlashAttribute("link", act.get());
            redirect.addFlashAttribute("linkFor", username);
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return BACK;
    }

    private static Reach reach(boolean everywhere, Set<Long> areaIds) {
        return everywhere ? Reach.EVERYWHERE : new Reach(false, areaIds);
    }
}
