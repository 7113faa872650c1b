package org.ohmstead.fleet.web;

import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.LinkView;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Corrects the record of one jar in its place, or how one link is built. */
@Controller
@RequestMapping("/register/strings/{id}")
class OccupancyForms {

    private final FleetRegister register;
    private final JarsAndLinks jarsAndLinks;
    private final Designs designs;
    private final Access access;

    OccupancyForms(FleetRegister register, JarsAndLinks jarsAndLinks, Designs designs, Access access) {
        this.register = register;
        this.jarsAndLinks = jarsAndLinks;
        this.designs = designs;
        this.access = access;
    }

    @GetMapping("/jars/{occupancyId}")
    ModelAndView jar(@PathVariable long id, @PathVariable long occupancyId) {
        StringView string = editable(id);
        OccupancyView jar = jarsAndLinks.occupancy(occupancyId);
        EntryForm form = designs.occupancy(string).form(Sheets.OCCUPANCIES.cells(entry(string, jar)));
        return page(form, jarTitle(jar), string, "/jars/" + occupancyId);
    }

    @PostMapping("/jars/{occupancyId}")
    ModelAndView changeJar(
            @PathVariable long id,
            @PathVariable long occupancyId,
            @RequestParam Map<String, String> typed,
            RedirectAttributes redirect) {
        StringView string = editable(id);
        OccupancyView jar = jarsAndLinks.occupancy(occupancyId);
        EntryForm again = designs.occupancy(string)
                .submit(
                        Map.of("site", string.siteCode(), "string", string.name()),
                        typed,
                        entry -> jarsAndLinks.changeOccupancy(occupancyId, entry));
        return again == null
                ? done(redirect, id, "The record is corrected.")
                : page(again, jarTitle(jar), string, "/jars/" + occupancyId);
    }

    @GetMapping("/links/{ordinal}")
    ModelAndView link(@PathVariable long id, @PathVariable int ordinal) {
        StringView string = editable(id);
        LinkView link = register.blueprint(id).links().stream()
                .filter(any -> any.ordinal() == ordinal)
                .findFirst()
                .orElseThrow(() -> NotFound.of("link", ordinal));
        LinkEntry entry =
                new LinkEntry(string.siteCode(), string.name(), ordinal, link.kind(), link.straps(), link.conductor());
        return page(designs.link().form(Sheets.LINKS.cells(entry)), linkTitle(ordinal), string, "/links/" + ordinal);
    }

    @PostMapping("/links/{ordinal}")
    ModelAndView changeLink(
            @PathVariable long id,
            @PathVariable int ordinal,
            @RequestParam Map<String, String> typed,
            RedirectAttributes redirect) {
        StringView string = editable(id);
        EntryForm again = designs.link()
                .submit(
                        Map.of(
                                "site", string.siteCode(),
                                "string", string.name(),
                                "link", String.valueOf(ordinal)),
                        typed,
                        jarsAndLinks::changeLink);
        return again == null
                ? done(redirect, id, "The link is changed.")
                : page(again, linkTitle(ordinal), string, "/links/" + ordinal);
    }

    private StringView editable(long id) {
        StringView string = register.string(id);
        access.require(Permission.EDIT_REGISTER, string.areaId());
        return string;
    }

    private static OccupancyEntry entry(StringView string, OccupancyView jar) {
        return new OccupancyEntry(
                string.siteCode(),
                string.name(),
                jar.position(),
                jar.jarTypeCode(),
                jar.serial(),
                jar.during().from(),
                jar.during().until(),
                jar.reason(),
                jar.leftReason(),
                jar.baselineOhmic(),
                jar.baselineSource());
    }

    private static String jarTitle(OccupancyView jar) {
        return "Position " + jar.position() + ", " + jar.jar();
    }

    private static String linkTitle(int ordinal) {
        return "Link " + ordinal;
    }

    private static ModelAndView page(EntryForm form, String title, StringView string, String path) {
        String address = "/register/strings/" + string.id();
        return EntryPage.of(
                form,
                title,
                address + path,
                List.of(Map.entry("Register", "/register"), Map.entry(string.title(), address + "/jars")));
    }

    private static ModelAndView done(RedirectAttributes redirect, long id, String notice) {
        redirect.addFlashAttribute("notice", notice);
        return new ModelAndView("redirect:/register/strings/" + id + "/jars");
    }
}
