package org.ohmstead.fleet.web;

import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.fleet.csv.Sheets;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Jar types with their ratings and reference values, and where these come from. */
@Controller
class LibraryController {

    private static final List<Map.Entry<String, String>> TRAIL = List.of(Map.entry("Library", "/library"));

    private final FleetRegister register;
    private final Designs designs;
    private final Access access;

    LibraryController(FleetRegister register, Designs designs, Access access) {
        this.register = register;
        this.designs = designs;
        this.access = access;
    }

    @GetMapping("/library")
    String library(Model model) {
        model.addAttribute("jarTypes", register.jarTypes());
        model.addAttribute("mayEdit", access.current().may(Permission.EDIT_REGISTER));
        return "library/library";
    }

    @GetMapping("/library/new")
    ModelAndView blank() {
        access.require(Permission.EDIT_REGISTER);
        Map<String, String> usual = Map.of("rated_h", "8", "rating_c", "25", "design_life_c", "25");
        return EntryPage.of(designs.jarType().form(usual), "New jar type", "/library/new", TRAIL);
    }

    @PostMapping("/library/new")
    ModelAndView create(@RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        access.require(Permission.EDIT_REGISTER);
        EntryForm again = designs.jarType().submit(Map.of(), typed, register::createJarType);
        return again == null
                ? done(redirect, "The jar type is added.")
                : EntryPage.of(again, "New jar type", "/library/new", TRAIL);
    }

    @GetMapping("/library/{code}")
    ModelAndView jarType(@PathVariable String code) {
        access.require(Permission.EDIT_REGISTER);
        JarTypeView jarType = register.jarType(code);
        EntryForm form = designs.jarType().form(Sheets.JAR_TYPES.cells(jarType.entry()));
        return EntryPage.of(form, "Jar type " + code, "/library/" + code, TRAIL)
                .addObject("version", jarType.version());
    }

    @PostMapping("/library/{code}")
    ModelAndView change(
            @PathVariable String code,
            @RequestParam int version,
            @RequestParam Map<String, String> typed,
            RedirectAttributes redirect) {
        access.require(Permission.EDIT_REGISTER);
        JarTypeView jarType = register.jarType(code);
        EntryForm again = designs.jarType()
                .submit(Map.of(), typed, entry -> register.changeJarType(jarType.id(), version, entry));
        return again == null
                ? done(redirect, "The jar type is changed; the strings built with it are judged anew.")
                : EntryPage.of(again, "Jar type " + code, "/library/" + code, TRAIL)
                        .addObject("version", version);
    }

    private static ModelAndView done(RedirectAttributes redirect, String notice) {
        redirect.addFlashAttribute("notice", notice);
        return new ModelAndView("redirect:/library");
    }
}
