package org.ohmstead.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the layout needs to know of a request.
 *
 * @param path asked for, without the context path
 * @param section which entry of the navigation it belongs to, empty for none
 * @param demo whether this is the demonstration
 */
public record Shell(String path, String section, boolean demo) {

    private static final List<String> SECTIONS = List.of(
            "intake", "work", "rounds", "compliance", "forecast", "register", "library", "account", "administration");
    private static final List<String> OF_THE_ESTATE = List.of("", "sites", "strings", "capacity-tests");

    public static Shell of(String path, boolean demo) {
        return new Shell(path, section(path), demo);
    }

    static Shell of(HttpServletRequest request, boolean demo) {
        // an error page is shown at the address that was asked for
        Object failed = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        String uri = failed == null ? request.getRequestURI() : failed.toString();
        return of(uri.substring(Math.min(uri.length(), request.getContextPath().length())), demo);
    }

    private static String section(String path) {
        String first = path.replaceFirst("^/", "").replaceFirst("/.*", "");
        if (OF_THE_ESTATE.contains(first)) {
            return "estate";
        }
        if (first.equals("capacity")) {
            return "library";
        }
        if (first.equals("visits")) {
            return "rounds";
        }
        if (first.equals("reports")) {
            return "compliance";
        }
        if (first.equals("instruments")) {
            return "library";
        }
        return first.equals("surveys") ? "intake" : SECTIONS.contains(first) ? first : "";
    }

    /** For {@code aria-current}: the page itself, something below it, or null. */
    public @Nullable String current(String section, String address) {
        if (path.equals(address)) {
            return "page";
        }
        return this.section.equals(section) ? "true" : null;
    }
}
