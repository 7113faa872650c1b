package org.ohmstead.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Gives every page's model the {@link Shell} its layout asks for. */
@ControllerAdvice
class ShellAdvice {

    private final boolean demo;

    ShellAdvice(Environment environment) {
        demo = environment.acceptsProfiles(Profiles.of("demo"));
    }

    @ModelAttribute("shell")
    Shell shell(HttpServletRequest request) {
        return Shell.of(request, demo);
    }
}
