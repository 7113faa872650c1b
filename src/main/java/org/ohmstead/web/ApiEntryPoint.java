package org.ohmstead.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;

/** Answers an API request from nobody we know. */
class ApiEntryPoint implements AuthenticationEntryPoint {

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException refusal)
            throws IOException {
        answer(request, response, "Sign in, or send a personal token: \"Authorization: Bearer ohm_...\".");
    }

    static void answer(HttpServletRequest request, HttpServletResponse response, String detail) throws IOException {
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
        ProblemKind.NOT_SIGNED_IN.write(request, response, detail);
    }
}
