package org.ohmstead.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * An empty parameter of a GET is one that was left out: a form sends {@code area=} for "all in reach", and so does a link
 * made without one.
 */
@Component
class LeftOut extends OncePerRequestFilter {

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean asks = HttpMethod.GET.matches(request.getMethod()) || HttpMethod.HEAD.matches(request.getMethod());
        chain.doFilter(asks ? new Asked(request) : request, response);
    }

    private static final class Asked extends HttpServletRequestWrapper {

        private final Map<String, String[]> parameters = new LinkedHashMap<>();

        Asked(HttpServletRequest request) {
            super(request);
            request.getParameterMap().forEach((name, values) -> {
                String[] said =
                        Arrays.stream(values).filter(value -> !value.isEmpty()).toArray(String[]::new);
                if (said.length > 0) {
                    parameters.put(name, said);
                }
            });
        }

        @Override
        public @Nullable String getParameter(String name) {
            String[] values = parameters.get(name);
            return values == null ? null : values[0];
        }

        @Override
        public String @Nullable [] getParameterValues(String name) {
            String[] values = parameters.get(name);
            return values == null ? null : values.clone();
        }

        @Override
        public Map<String, String[]> getParameterMap() {
            return Collections.unmodifiableMap(parameters);
        }

        @Override
        public Enumeration<String> getParameterNames() {
            return Collections.enumeration(parameters.keySet());
        }
    }
}
