package org.ohmstead.programme.web;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Technology;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.RulePacks;
import org.ohmstead.programme.StringDuties;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A string's duties, and what was decided about them. */
@Controller
@RequestMapping("/strings/{stringId}")
class ProgrammePages {

    private final FleetRegister register;
    private final Programme programme;
    private final ProgrammeKeeping keeping;
    private final RulePacks packs;
    private final Access access;

    ProgrammePages(
            FleetRegister register, Programme programme, ProgrammeKeeping keeping, RulePacks packs, Access access) {
        this.register = register;
        this.programme = programme;
        this.keeping = keeping;
        this.packs = packs;
        this.access = access;
    }

    /** The panel that the string's page fetches. */
    @GetMapping("/duties")
    String panel(@PathVariable long stringId, Model model) {
        duties(stringId, null, model);
        return "programme/panel :: duties";
    }

    @GetMapping("/programme")
    String programme(
            @PathVariable long stringId, @RequestParam(required = false) @Nullable LocalDate asOf, Model model) {
        StringView string = register.string(stringId);
        duties(stringId, asOf, model);
        model.addAttribute("string", string);
        model.addAttribute("site", register.site(string.siteCode()));
        model.addAttribute("asked", asOf);
        model.addAttribute("decisions", keeping.decisions(stringId));
        model.addAttribute("next", programme.findNextDate(stringId).orElse(null));
        model.addAttribute("mayEdit", access.current().may(Permission.EDIT_REGISTER));
        model.addAttribute("mayWaive", access.current().may(Permission.OVERRULE));
        Technology technology = register.jarType(string.jarTypeCode()).technology();
        model.addAttribute(
                "packs",
                packs.all().stream()
                        .filter(listed -> listed.pack().suits(technology))
                        .toList());
        return "programme/string";
    }

    private void duties(long stringId, @Nullable LocalDate asOf, Model model) {
        StringDuties duties = programme.duties(stringId, asOf);
        List<DutyRow> rows = duties.duties().stream()
                .map(DutyRow::of)
                .sorted(Comparator.comparing(DutyRow::dueOn, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
        model.addAttribute("duties", duties);
        model.addAttribute("rows", rows);
        model.addAttribute("stringId", stringId);
    }

    @PostMapping("/programme/pack")
    String assign(
            @PathVariable long stringId,
            @RequestParam String pack,
            @RequestParam LocalDate from,
            RedirectAttributes redirect) {
        return decide(
                stringId,
                redirect,
                "The string is under another pack from " + from + ".",
                () -> keeping.assign(stringId, pack, from));
    }

    @PostMapping("/programme/election")
    String elect(
            @PathVariable long stringId,
            @RequestParam String choice,
            @RequestParam LocalDate from,
            RedirectAttributes redirect) {
        String[] parts = choice.split("/", 2);
        return decide(
                stringId,
                redirect,
                "The requirement is met in another way from " + from + ".",
                () -> keeping.elect(stringId, parts[0], parts[parts.length - 1], from));
    }

    @PostMapping("/programme/interval")
    String shorten(
            @PathVariable long stringId,
            @RequestParam String requirement,
            @RequestParam(required = false) @Nullable Integer months,
            @RequestParam LocalDate from,
            RedirectAttributes redirect) {
        return decide(
                stringId,
                redirect,
                months == null ? "The pack's interval alone counts again." : "The shorter interval is kept.",
                () -> keeping.shorten(stringId, requirement, months, from));
    }

    @PostMapping("/programme/waiver")
    String waive(
            @PathVariable long stringId,
            @RequestParam String requirement,
            @RequestParam LocalDate until,
            @RequestParam String reason,
            RedirectAttributes redirect) {
        return decide(
                stringId,
                redirect,
                "The duty is waived until " + until + "; its due day stays.",
                () -> keeping.waive(stringId, requirement, until, reason));
    }

    @PostMapping("/programme/waivers/{waiverId}/end")
    String endWaiver(@PathVariable long stringId, @PathVariable long waiverId, RedirectAttributes redirect) {
        return decide(
                stringId,
                redirect,
                "The waiver excuses nothing from today on.",
                () -> keeping.endWaiver(stringId, waiverId));
    }

    private static String decide(long stringId, RedirectAttributes redirect, String done, Runnable act) {
        try {
            act.run();
            redirect.addFlashAttribute("notice", done);
        } catch (Refused | Conflict | NotFound e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/strings/" + stringId + "/programme";
    }
}
