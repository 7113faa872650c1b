package org.ohmstead.programme.web;

import java.time.LocalDate;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.RulePacks;
import org.ohmstead.programme.rules.Requirement;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The library's rule packs: what each asks and where that is written; copied and shortened by form. */
@Controller
@RequestMapping("/library/packs")
class PackPages {

    private final RulePacks packs;
    private final Access access;

    PackPages(RulePacks packs, Access access) {
        this.packs = packs;
        this.access = access;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("packs", packs.all());
        return "programme/packs";
    }

    @GetMapping("/{code}")
    String pack(@PathVariable String code, Model model) {
        model.addAttribute("listed", packs.latest(code));
        model.addAttribute("versions", packs.versionsOf(code));
        model.addAttribute("mayEdit", access.current().may(Permission.EDIT_REGISTER));
        return "programme/pack";
    }

    /** A copy under another code, or the next version of an own pack; months by the requirements' codes. */
    @PostMapping("/{code}")
    String save(
            @PathVariable String code,
            @RequestParam String newCode,
            @RequestParam String title,
            @RequestParam LocalDate inForceFrom,
            @RequestParam Map<String, String> typed,
            RedirectAttributes redirect) {
        try {
            RulePack wished = packs.latest(code).pack().as(newCode.strip(), title.strip(), inForceFrom);
            for (Requirement requirement : wished.requirements()) {
                String months =
                        typed.getOrDefault("own_" + requirement.code(), "").strip();
                wished = shortened(wished, requirement, months);
            }
            RulePack saved = packs.save(wished);
            redirect.addFlashAttribute("notice", "Version " + saved.version() + " is saved.");
            redirect.addAttribute("code", saved.code());
            return "redirect:/library/packs/{code}";
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
            redirect.addAttribute("code", code);
            return "redirect:/library/packs/{code}";
        }
    }

    private static RulePack shortened(RulePack pack, Requirement requirement, String months) {
        try {
            return pack.withOwnMonths(requirement.code(), months.isEmpty() ? null : Integer.valueOf(months));
        } catch (NumberFormatException e) {
            throw new Refused(
                    requirement.activity() + ": the own interval is a number of whole months, not \"" + months + "\".");
        } catch (IllegalArgumentException e) {
            throw new Refused(requirement.activity() + ": " + e.getMessage());
        }
    }
}
