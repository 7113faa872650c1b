package org.ohmstead.onsite.web;

import java.util.Map;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.access.Person;
import org.ohmstead.onsite.Walk;
import org.ohmstead.onsite.Walks;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A string's page on site: last values, cautions, and the form in walking order. */
@Controller
class WalkController {

    private final Walks walks;
    private final Access access;

    WalkController(Walks walks, Access access) {
        this.walks = walks;
        this.access = access;
    }

    @GetMapping("/strings/{stringId}/walk")
    String walk(@PathVariable long stringId, Model model) {
        Person person = access.current();
        Walk walk = walks.walk(stringId);
        model.addAttribute("walk", walk);
        model.addAttribute("steps", WalkStep.of(walk));
        model.addAttribute("words", WalkWords.FOR_PAGES);
        model.addAttribute("ticket", UUID.randomUUID());
        model.addAttribute("takenBy", person.displayName());
        model.addAttribute("mayHandIn", person.may(Permission.HAND_IN_SURVEYS));
        return "onsite/walk";
    }

    /** The way without a script: the form as a whole, on the way that every file takes. */
    @PostMapping("/strings/{stringId}/walk")
    String handIn(@PathVariable long stringId, @RequestParam UUID ticket, @RequestParam Map<String, String> typed) {
        return "redirect:/intake/"
                + walks.handIn(ticket, stringId, typed).upload().id();
    }
}
