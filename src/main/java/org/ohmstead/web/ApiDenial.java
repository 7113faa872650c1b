package org.ohmstead.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;

/** Answers an API request that may not be made. */
class ApiDenial implements AccessDeniedHandler {

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
            throws IOException {
        String detail = refusal instanceof CsrfException
                ? "A change made with a browser session needs the page's form token; programs send a personal token."
                : "You may not do this.";
        ProblemKind.NOT_ALLOWED.write(request, response, detail);
    }
}
