package org.ohmstead.overview.web;

import java.util.List;
import org.ohmstead.assessment.ReplayedDay;
import org.ohmstead.assessment.StringReplay;
import org.ohmstead.overview.StringOverview;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.ResponseBody;

/** What would have been said of a string at each of its surveys. */
@Controller
class ReplayController {

    private final StringOverview overview;
    private final StringReplay replay;

    ReplayController(StringOverview overview, StringReplay replay) {
        this.overview = overview;
        this.replay = replay;
    }

    @GetMapping("/strings/{stringId}/replay")
    String page(@PathVariable long stringId, Model model) {
        EstateController.common(model);
        model.addAttribute("plate", overview.string(stringId).page().plate());
        model.addAttribute("days", replay.of(stringId));
        return "overview/replay";
    }

    @GetMapping("/api/strings/{stringId}/replay")
    @ResponseBody
    List<ReplayedDay> days(@PathVariable long stringId) {
        return replay.of(stringId);
    }
}
