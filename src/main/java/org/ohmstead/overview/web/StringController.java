package org.ohmstead.overview.web;

import jakarta.servlet.http.HttpServletRequest;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.assessment.JarTypeLessons;
import org.ohmstead.chart.TapestryDrawing;
import org.ohmstead.overview.StringOverview;
import org.ohmstead.overview.UnitPage;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** A string, and the life of each of its jars and links. */
@Controller
class StringController {

    private final StringOverview overview;
    private final JarTypeLessons lessons;
    private final Access access;

    StringController(StringOverview overview, JarTypeLessons lessons, Access access) {
        this.overview = overview;
        this.lessons = lessons;
        this.access = access;
    }

    @GetMapping("/strings/{stringId}")
    String string(@PathVariable long stringId, HttpServletRequest request, Model model) {
        StringOverview.Dossier dossier = overview.string(stringId);
        StringDrawings drawings = new StringDrawings(dossier.page(), request.getContextPath());
        EstateController.common(model);
        model.addAttribute("page", dossier.page());
        model.addAttribute("rackWide", drawings.rackWide());
        model.addAttribute("rackNarrow", drawings.rackNarrow());
        model.addAttribute("strip", drawings.strip());
        model.addAttribute("tapestry", StringDrawings.tapestry(dossier.history()));
        model.addAttribute("tapestryKey", TapestryDrawing.key("key"));
        model.addAttribute("mayOverrule", access.current().may(Permission.OVERRULE));
        return "overview/string";
    }

    @GetMapping("/strings/{stringId}/jars/{position}")
    String jar(@PathVariable long stringId, @PathVariable int position, Model model) {
        model.addAttribute("subject", "JAR");
        model.addAttribute("number", position);
        return unit(overview.jar(stringId, position), true, model);
    }

    @GetMapping("/strings/{stringId}/links/{ordinal}")
    String link(@PathVariable long stringId, @PathVariable int ordinal, Model model) {
        model.addAttribute("subject", "LINK");
        model.addAttribute("number", ordinal);
        return unit(overview.link(stringId, ordinal), false, model);
    }

    private String unit(UnitPage unit, boolean withVolts, Model model) {
        EstateController.common(model);
        model.addAttribute("unit", unit);
        model.addAttribute("trend", UnitDrawings.trend(unit));
        model.addAttribute(
                "fan", UnitDrawings.fan(unit, lessons.limitRise(unit.plate().stringId())));
        model.addAttribute("mayOverrule", access.current().may(Permission.OVERRULE));
        model.addAttribute("withVolts", withVolts);
        return "overview/unit";
    }
}
