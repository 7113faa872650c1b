package org.ohmstead.access.web;

import org.ohmstead.access.People;
import org.ohmstead.kernel.Refused;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The door: signing in, and choosing a password through a one-time link. */
@Controller
class SignInController {

    private final People people;
    private final boolean demo;

    SignInController(People people, Environment environment) {
        this.people = people;
        this.demo = environment.acceptsProfiles(Profiles.of("demo"));
    }

    @GetMapping("/sign-in")
    String signIn(Model model) {
        model.addAttribute("demo", demo);
        return "access/sign-in";
    }

    @GetMapping("/welcome/{secret}")
    String welcome(@PathVariable String secret, Model model) {
        model.addAttribute("secret", secret);
        model.addAttribute("person", people.ownerOfLink(secret).orElse(null));
        return "access/welcome";
    }

    @PostMapping("/welcome/{secret}")
    String choose(
            @PathVariable String secret,
            @RequestParam String password,
            @RequestParam String again,
            RedirectAttributes redirect) {
        try {
            if (!password.equals(again)) {
                throw new Refused("The two entries differ; type the same password twice.");
            }
            people.redeem(secret, password);
        } catch (Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
            return "redirect:/welcome/" + secret;
        }
        return "redirect:/sign-in?chosen";
    }
}
