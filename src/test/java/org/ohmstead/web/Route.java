package org.ohmstead.web;

import java.util.Comparator;
import java.util.List;
import org.springframework.http.HttpMethod;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** A method and an address that one of the service's own controllers answers. */
record Route(HttpMethod method, String pattern, RequestMappingInfo info, HandlerMethod handler) {

    private static final Comparator<Route> BY_ADDRESS = Comparator.comparing(Route::pattern)
            .thenComparing(route -> route.method().name());

    /** Some share method and address, and differ in the kind of body or a parameter. */
    static List<Route> of(List<RequestMappingHandlerMapping> mappings) {
        return mappings.stream()
                .flatMap(mapping -> mapping.getHandlerMethods().entrySet().stream())
                .filter(entry -> entry.getValue().getBeanType().getPackageName().startsWith("org.ohmstead."))
                .flatMap(entry -> of(entry.getKey(), entry.getValue()).stream())
                .sorted(BY_ADDRESS)
                .toList();
    }

    /** A handler that names no method answers every one: then it is asked with those that matter. */
    private static List<Route> of(RequestMappingInfo info, HandlerMethod handler) {
        List<HttpMethod> methods = info.getMethodsCondition().getMethods().stream()
                .map(one -> one.asHttpMethod())
                .toList();
        List<HttpMethod> asked = methods.isEmpty() ? List.of(HttpMethod.GET, HttpMethod.POST) : methods;
        return info.getPatternValues().stream()
                .flatMap(pattern -> asked.stream().map(method -> new Route(method, pattern, info, handler)))
                .toList();
    }

    boolean isApi() {
        return pattern.startsWith("/api/");
    }

    /** Its line's beginning in the table. */
    String address() {
        return method + "," + pattern;
    }
}
