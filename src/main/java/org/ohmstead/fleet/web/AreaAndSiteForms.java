package org.ohmstead.fleet.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.AreaView;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.csv.Sheets;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Areas and sites: adding and changing them. */
@Controller
class AreaAndSiteForms {

    private static final List<Map.Entry<String, String>> TRAIL = List.of(Map.entry("Register", "/register"));

    private final FleetRegister register;
    private final Designs designs;
    private final Access access;

    AreaAndSiteForms(FleetRegister register, Designs designs, Access access) {
        this.register = register;
        this.designs = designs;
        this.access = access;
    }

    @GetMapping("/register/areas/new")
    ModelAndView newArea() {
        access.require(Permission.ADMINISTER);
        return page(designs.area().form(Map.of()), "New area", "/register/areas/new");
    }

    @PostMapping("/register/areas/new")
    ModelAndView createArea(@RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        access.require(Permission.ADMINISTER);
        EntryForm again = designs.area().submit(Map.of(), typed, register::createArea);
        return again == null ? done(redirect, "The area is added.") : page(again, "New area", "/register/areas/new");
    }

    @GetMapping("/register/areas/{code}")
    ModelAndView area(@PathVariable String code) {
        access.require(Permission.ADMINISTER);
        AreaView area = register.area(code);
        EntryForm form = designs.area().form(Sheets.AREAS.cells(area.entry()));
        return page(form, "Area " + code, "/register/areas/" + code).addObject("version", area.version());
    }

    @PostMapping("/register/areas/{code}")
    ModelAndView changeArea(
            @PathVariable String code,
            @RequestParam int version,
            @RequestParam Map<String, String> typed,
            RedirectAttributes redirect) {
        access.require(Permission.ADMINISTER);
        AreaView area = register.area(code);
        EntryForm again =
                designs.area().submit(Map.of(), typed, entry -> register.changeArea(area.id(), version, entry));
        return again == null
                ? done(redirect, "The area is changed.")
                : page(again, "Area " + code, "/register/areas/" + code).addObject("version", version);
    }

    @GetMapping("/register/sites/new")
    ModelAndView newSite(@RequestParam(defaultValue = "") String area) {
        access.require(Permission.EDIT_REGISTER);
        Map<String, String> cells = new HashMap<>(Map.of("area", area));
        register.sites().stream()
                .filter(site -> site.areaCode().equals(area))
                .findFirst()
                .ifPresent(site -> cells.put("time_zone", site.timeZone().getId()));
        return page(designs.site().form(cells), "New site", "/register/sites/new");
    }

    @PostMapping("/register/sites/new")
    ModelAndView createSite(@RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        access.require(Permission.EDIT_REGISTER);
        EntryForm again = designs.site().submit(Map.of(), typed, register::createSite);
        return again == null ? done(redirect, "The site is added.") : page(again, "New site", "/register/sites/new");
    }

    @GetMapping("/register/sites/{code}")
    ModelAndView site(@PathVariable String code) {
        SiteView site = register.site(code);
        access.require(Permission.EDIT_REGISTER, site.areaId());
        EntryForm form = designs.site().form(Sheets.SITES.cells(site.entry()));
        return page(form, "Site " + code, "/register/sites/" + code).addObject("version", site.version());
    }

    @PostMapping("/register/sites/{code}")
    ModelAndView changeSite(
            @PathVariable String code,
            @RequestParam int version,
            @RequestParam Map<String, String> typed,
            RedirectAttributes redirect) {
        SiteView site = register.site(code);
        access.require(Permission.EDIT_REGISTER, site.areaId());
        EntryForm again =
                designs.site().submit(Map.of(), typed, entry -> register.changeSite(site.id(), version, entry));
        return again == null
                ? done(redirect, "The site is changed.")
                : page(again, "Site " + code, "/register/sites/" + code).addObject("version", version);
    }

    private static ModelAndView page(EntryForm form, String title, String action) {
        return EntryPage.of(form, title, action, TRAIL);
    }

    private static ModelAndView done(RedirectAttributes redirect, String notice) {
        redirect.addFlashAttribute("notice", notice);
        return new ModelAndView("redirect:/register");
    }
}
