package org.ohmstead.access.web;

import org.ohmstead.access.Access;
import org.ohmstead.access.ApiTokens;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A person's own page: password and tokens. */
@Controller
class AccountController {

    private static final String BACK = "redirect:/account";

    private final Access access;
    private final ApiTokens tokens;
    private final People people;

    AccountController(Access access, ApiTokens tokens, People people) {
        this.access = access;
        this.tokens = tokens;
        this.people = people;
    }

    @GetMapping("/account")
    String account(Model model) {
        Person person = access.current();
        model.addAttribute("person", person);
        model.addAttribute("tokens", tokens.of(person));
        return "access/account";
    }

    @PostMapping("/account/tokens")
    String makeToken(@RequestParam String label, RedirectAttributes redirect) {
        try {
            redirect.addFlashAttribute("token", tokens.create(access.current(), label));
        } catch (Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return BACK;
    }

    @PostMapping("/account/tokens/{id}/revoke")
    String revokeToken(@PathVariable long id, RedirectAttributes redirect) {
        tokens.revoke(access.current(), id);
        redirect.addFlashAttribute("done", "The token opens nothing any more.");
        return BACK;
    }

    @PostMapping("/account/password")
    String changePassword(
            @RequestParam String current,
            @RequestParam String password,
            @RequestParam String again,
            RedirectAttributes redirect) {
        try {
            if (!password.equals(again)) {
                throw new Refused("The two entries of the new password differ; type the same twice.");
            }
            people.changeOwnPassword(access.current(), current, password);
            redirect.addFlashAttribute("done", "Your new password is in force.");
        } catch (Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return BACK;
    }
}
