package org.ohmstead.fleet.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.fleet.csv.StringEntry;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Strings: adding and changing them, with their plan in words while it is typed. */
@Controller
class StringForms {

    private static final String NEW = "/register/strings/new";
    private static final List<Map.Entry<String, String>> TRAIL = List.of(Map.entry("Register", "/register"));

    private final FleetRegister register;
    private final Designs designs;
    private final Access access;

    StringForms(FleetRegister register, Designs designs, Access access) {
        this.register = register;
        this.designs = designs;
        this.access = access;
    }

    @GetMapping(NEW)
    ModelAndView blank(@RequestParam(defaultValue = "") String site) {
        access.require(Permission.EDIT_REGISTER);
        Map<String, String> usual =
                Map.of("site", site, "straps_per_link", "1", "parallel_strings", "1", "survey_interval_months", "12");
        return page(designs.string().form(usual), "New string", NEW, usual);
    }

    @PostMapping(NEW)
    ModelAndView create(@RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        access.require(Permission.EDIT_REGISTER);
        Map<String, Long> created = new HashMap<>();
        EntryForm again = designs.string()
                .submit(
                        Map.of(),
                        typed,
                        entry -> created.put("id", register.createString(entry).id()));
        if (again != null) {
            return page(again, "New string", NEW, typed);
        }
        redirect.addFlashAttribute("notice", "The string is added with its links. Now say which jars sit in it.");
        return new ModelAndView("redirect:/register/strings/" + created.get("id") + "/jars");
    }

    @GetMapping("/register/strings/{id}")
    ModelAndView string(@PathVariable long id) {
        StringView string = register.string(id);
        access.require(Permission.EDIT_REGISTER, string.areaId());
        Map<String, String> cells = Sheets.STRINGS.cells(string.entry());
        return page(designs.string().form(cells), "String " + string.title(), "/register/strings/" + id, cells)
                .addObject("version", string.version());
    }

    @PostMapping("/register/strings/{id}")
    ModelAndView change(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam Map<String, String> typed,
            RedirectAttributes redirect) {
        StringView string = register.string(id);
        access.require(Permission.EDIT_REGISTER, string.areaId());
        EntryForm again = designs.string()
                .submit(Map.of(), typed, (StringEntry entry) -> register.changeString(id, version, entry));
        if (again != null) {
            return page(again, "String " + string.title(), "/register/strings/" + id, typed)
                    .addObject("version", version);
        }
        redirect.addFlashAttribute("notice", "The string is changed.");
        return new ModelAndView("redirect:/register/strings/" + id + "/jars");
    }

    /** The plan in words, for the form that is being filled in. */
    @GetMapping("/register/plan")
    String plan(
            @RequestParam(defaultValue = "") String tiers,
            @RequestParam(name = "straps_per_link", defaultValue = "1") String straps,
            Model model) {
        access.require(Permission.SEE_ESTATE);
        model.addAttribute("plan", PlanWords.of(tiers, straps));
        return "register/fields :: plan";
    }

    private static ModelAndView page(EntryForm form, String title, String action, Map<String, String> cells) {
        String tiers = cells.getOrDefault("tiers", "");
        return EntryPage.of(form, title, action, TRAIL)
                .addObject("plan", PlanWords.of(tiers, cells.getOrDefault("straps_per_link", "1")));
    }
}
