package org.ohmstead.assessment.web;

import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.assessment.JarTypeLessons;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What the estate teaches of each jar type: shown, then applied by a person. */
@Controller
class LessonPages {

    private static final String BACK = "redirect:/library/lessons";

    private final JarTypeLessons lessons;
    private final Access access;

    LessonPages(JarTypeLessons lessons, Access access) {
        this.lessons = lessons;
        this.access = access;
    }

    @GetMapping("/library/lessons")
    String page(Model model) {
        model.addAttribute("shown", Shown.FOR_PAGES);
        model.addAttribute("lessons", lessons.all());
        model.addAttribute(
                "standardLimit", Math.expm1(ForecastParameters.standard().jars().logLimit()));
        model.addAttribute("mayApply", access.current().may(Permission.EDIT_REGISTER));
        return "assessment/lessons";
    }

    @PostMapping("/library/lessons/{code}")
    String apply(@PathVariable String code, @RequestParam String key, RedirectAttributes redirect) {
        try {
            lessons.apply(code, key);
            redirect.addFlashAttribute(
                    "notice", "Applied to " + code + "; its strings are judged anew in the background.");
        } catch (Conflict | Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return BACK;
    }

    @PostMapping("/library/lessons/{code}/take-back")
    String takeBack(@PathVariable String code, RedirectAttributes redirect) {
        lessons.takeBack(code);
        redirect.addFlashAttribute(
                "notice",
                "Taken back: the standard values hold again for " + code + ", once its strings are judged anew.");
        return BACK;
    }
}
