package org.ohmstead.assessment.web;

import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.assessment.Assessments;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/** The walk over the whole estate: when it ran last, how far it is, and the button that asks for one. */
@Controller
class AnalysisController {

    private final Assessments assessments;
    private final Access access;

    AnalysisController(Assessments assessments, Access access) {
        this.assessments = assessments;
        this.access = access;
    }

    @GetMapping("/analysis")
    String analysis(Model model) {
        progress(model);
        model.addAttribute("mayAsk", access.current().may(Permission.SETTLE_SURVEYS));
        return "assessment/analysis";
    }

    /** The part of the page that a browser asks for again while a walk is under way. */
    @GetMapping("/analysis/progress")
    String progress(Model model) {
        model.addAttribute("run", assessments.lastRun().orElse(null));
        return "assessment/analysis :: progress";
    }

    @PostMapping("/analysis")
    String ask() {
        assessments.requestEstateRun();
        return "redirect:/analysis";
    }
}
