package org.ohmstead.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.ApiTokens;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets a request in by the personal token in its {@code Authorization: Bearer} header. */
class BearerTokens extends OncePerRequestFilter {

    private static final String SCHEME = "Bearer ";

    private final ApiTokens tokens;

    BearerTokens(ApiTokens tokens) {
        this.tokens = tokens;
    }

    /** Such a request can't be forged by another site's page: browsers never add this header on their own. */
    static boolean carriesToken(HttpServletRequest request) {
        return token(request) != null;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String token = token(request);
        if (token == null) {
            chain.doFilter(request, response);
            return;
        }
        Optional<Person> owner = tokens.owner(token);
        if (owner.isEmpty()) {
            ApiEntryPoint.answer(request, response, "This token is unknown, revoked or out of date.");
            return;
        }
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(new PersonAuthentication(owner.get()));
        SecurityContextHolder.setContext(context);
        chain.doFilter(request, response);
    }

    private static @Nullable String token(HttpServletRequest request) {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        return header != null && header.startsWith(SCHEME)
                ? header.substring(SCHEME.length()).strip()
                : null;
    }
}
