package org.ohmstead.fleet.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.RemakeView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.kernel.NotFound;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The jars and links of a string: the two commonest acts at the top, everything undoable. */
@Controller
@RequestMapping("/register/strings/{id}/jars")
class JarsAndLinksController {

    private final FleetRegister register;
    private final JarsAndLinks jarsAndLinks;
    private final Designs designs;
    private final Access access;
    private final Clock clock;

    JarsAndLinksController(
            FleetRegister register, JarsAndLinks jarsAndLinks, Designs designs, Access access, Clock clock) {
        this.register = register;
        this.jarsAndLinks = jarsAndLinks;
        this.designs = designs;
        this.access = access;
        this.clock = clock;
    }

    @GetMapping
    ModelAndView jars(
            @PathVariable long id,
            @RequestParam(defaultValue = "") String position,
            @RequestParam(defaultValue = "") String link) {
        StringBlueprint blueprint = register.blueprint(id);
        return page(
                blueprint,
                designs.replacement(blueprint.string()).form(replacementCells(blueprint, position)),
                designs.remake(blueprint.string()).form(remakeCells(blueprint, link)));
    }

    /** Replaces the jar that sits there on that day, or takes an empty position. */
    @PostMapping
    ModelAndView seat(@PathVariable long id, @RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        StringBlueprint blueprint = register.blueprint(id);
        StringView string = blueprint.string();
        access.require(Permission.EDIT_REGISTER, string.areaId());
        OccupancyView[] seated = new OccupancyView[1];
        EntryForm again = designs.replacement(string)
                .submit(ofString(string), typed, entry -> seated[0] = seat(blueprint, entry));
        if (again != null) {
            return page(blueprint, again, designs.remake(string).form(remakeCells(blueprint, "")));
        }
        OccupancyView jar = seated[0];
        String notice = "Position " + jar.position() + " has " + jar.jar() + " since "
                + jar.during().from() + "; its history starts anew.";
        return done(redirect, id, notice, "/register/strings/" + id + "/jars/" + jar.id() + "/take-back");
    }

    @PostMapping("/remakes")
    ModelAndView remake(@PathVariable long id, @RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        StringBlueprint blueprint = register.blueprint(id);
        StringView string = blueprint.string();
        access.require(Permission.EDIT_REGISTER, string.areaId());
        RemakeView[] recorded = new RemakeView[1];
        EntryForm again = designs.remake(string)
                .submit(ofString(string), typed, entry -> recorded[0] = jarsAndLinks.recordRemake(entry));
        if (again != null) {
            return page(blueprint, designs.replacement(string).form(replacementCells(blueprint, "")), again);
        }
        RemakeView remake = recorded[0];
        String notice =
                "Link " + remake.ordinal() + " is remade on " + remake.remadeOn() + "; its history starts anew.";
        return done(redirect, id, notice, "/register/strings/" + id + "/jars/remakes/" + remake.id() + "/take-back");
    }

    @PostMapping("/filling")
    ModelAndView fill(@PathVariable long id, RedirectAttributes redirect) {
        int jars = jarsAndLinks.fillEmptyPositions(id, register.string(id).inServiceOn());
        return done(redirect, id, jars + " positions got a jar without serial.", null);
    }

    @PostMapping("/{occupancyId}/take-back")
    ModelAndView takeBack(@PathVariable long id, @PathVariable long occupancyId, RedirectAttributes redirect) {
        OccupancyView jar = jarsAndLinks.occupancy(occupancyId);
        requireSame(id, jar.stringId());
        jarsAndLinks.takeBack(occupancyId);
        return done(redirect, id, "Taken back: position " + jar.position() + " is as it was before.", null);
    }

    @PostMapping("/remakes/{remakeId}/take-back")
    ModelAndView takeBackRemake(@PathVariable long id, @PathVariable long remakeId, RedirectAttributes redirect) {
        RemakeView remake = jarsAndLinks.remake(remakeId);
        requireSame(id, remake.stringId());
        jarsAndLinks.takeBackRemake(remakeId);
        return done(redirect, id, "Taken back: link " + remake.ordinal() + " is as it was before.", null);
    }

    private OccupancyView seat(StringBlueprint blueprint, OccupancyEntry entry) {
        boolean taken = blueprint.occupancies().stream()
                .anyMatch(jar ->
                        jar.position() == entry.position() && jar.during().contains(entry.from()));
        return taken ? jarsAndLinks.replaceJar(entry) : jarsAndLinks.placeJar(entry);
    }

    private ModelAndView page(StringBlueprint blueprint, EntryForm replacement, EntryForm remake) {
        StringView string = blueprint.string();
        ModelAndView page = new ModelAndView("register/jars")
                .addObject("string", string)
                .addObject("site", blueprint.site())
                .addObject("rows", FittingRows.jars(blueprint, today(blueprint)))
                .addObject("links", FittingRows.links(blueprint))
                .addObject("replacement", replacement)
                .addObject("remake", remake)
                .addObject("mayEdit", access.current().may(Permission.EDIT_REGISTER));
        if (replacement.isFlawed() || remake.isFlawed()) {
            page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return page;
    }

    /** The site's own date. */
    private LocalDate today(StringBlueprint blueprint) {
        return LocalDate.now(clock.withZone(blueprint.site().timeZone()));
    }

    private Map<String, String> replacementCells(StringBlueprint blueprint, String position) {
        boolean none = blueprint.occupancies().isEmpty();
        LocalDate from = none ? blueprint.string().inServiceOn() : today(blueprint);
        return Map.of(
                "position", position,
                "from", from.toString(),
                "jar_type", blueprint.string().jarTypeCode());
    }

    private Map<String, String> remakeCells(StringBlueprint blueprint, String link) {
        return Map.of("link", link, "remade_on", today(blueprint).toString());
    }

    private static Map<String, String> ofString(StringView string) {
        return new HashMap<>(Map.of("site", string.siteCode(), "string", string.name()));
    }

    private static void requireSame(long stringId, long itsStringId) {
        if (stringId != itsStringId) {
            throw NotFound.of("record of string", stringId);
        }
    }

    private static ModelAndView done(RedirectAttributes redirect, long id, String notice, @Nullable String undo) {
        redirect.addFlashAttribute("notice", notice);
        redirect.addFlashAttribute("undo", undo);
        return new ModelAndView("redirect:/register/strings/" + id + "/jars");
    }
}
