package org.ohmstead.web;

import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.core.DefaultParameterNameDiscoverer;
import org.springframework.core.MethodParameter;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RequestPart;
import org.springframework.web.bind.annotation.ValueConstants;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import tools.jackson.databind.json.JsonMapper;

/** Calls of a route: with nothing at all, and with the least that its handler's parameters take. */
final class LeastRequest {

    private static final LocalDate DAY = LocalDate.parse("2026-03-10");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final DefaultParameterNameDiscoverer NAMES = new DefaultParameterNameDiscoverer();

    private final Route route;
    private final DemoThings things;
    private final String username;
    private final List<MethodParameter> parameters = new ArrayList<>();

    /** @param username who asks */
    LeastRequest(Route route, DemoThings things, String username) {
        this.route = route;
        this.things = things;
        this.username = username;
        for (MethodParameter parameter : route.handler().getMethodParameters()) {
            parameter.initParameterNameDiscovery(NAMES);
            parameters.add(parameter);
        }
    }

    AbstractMockHttpServletRequestBuilder<?> empty() {
        AbstractMockHttpServletRequestBuilder<?> request = begun();
        route.info()
                .getParamsCondition()
                .getExpressions()
                .forEach(needed ->
                        request.param(needed.getName(), thing(needed.getName()).orElse("x")));
        if (parameters.stream().anyMatch(one -> one.hasParameterAnnotation(RequestBody.class))) {
            request.contentType(MediaType.APPLICATION_JSON).content("{}");
        }
        return request;
    }

    AbstractMockHttpServletRequestBuilder<?> least() {
        AbstractMockHttpServletRequestBuilder<?> request = begun();
        for (MethodParameter parameter : parameters) {
            if (parameter.hasParameterAnnotation(RequestBody.class)) {
                request.contentType(MediaType.APPLICATION_JSON).content(json(parameter.getGenericParameterType()));
            } else if (parameter.hasParameterAnnotation(RequestPart.class)) {
                String body = json(parameter.getGenericParameterType());
                part(request, name(parameter), MediaType.APPLICATION_JSON_VALUE, body);
            } else if (isNeeded(parameter)) {
                fill(request, parameter);
            }
        }
        return request;
    }

    private Optional<String> thing(String parameter) {
        return things.parameter(route.pattern(), parameter, username);
    }

    private AbstractMockHttpServletRequestBuilder<?> begun() {
        String address = things.address(route.pattern(), username);
        return parameters.stream().anyMatch(LeastRequest::isOfParts)
                ? MockMvcRequestBuilders.multipart(route.method(), address)
                : MockMvcRequestBuilders.request(route.method(), address);
    }

    private static boolean isOfParts(MethodParameter parameter) {
        return isFile(parameter.nestedIfOptional().getNestedParameterType())
                || parameter.getGenericParameterType().getTypeName().contains(MultipartFile.class.getName());
    }

    private static boolean isFile(Class<?> type) {
        return type == MultipartFile.class || type == MultipartHttpServletRequest.class;
    }

    private static boolean isNeeded(MethodParameter parameter) {
        RequestParam asked = parameter.getParameterAnnotation(RequestParam.class);
        return asked != null
                && asked.required()
                && asked.defaultValue().equals(ValueConstants.DEFAULT_NONE)
                && !Map.class.isAssignableFrom(parameter.getParameterType());
    }

    private void fill(AbstractMockHttpServletRequestBuilder<?> request, MethodParameter parameter) {
        if (isOfParts(parameter)) {
            part(request, name(parameter), MediaType.TEXT_PLAIN_VALUE, "x");
        } else {
            Object value = value(parameter.getGenericParameterType());
            request.param(name(parameter), thing(name(parameter)).orElse(value.toString()));
        }
    }

    private static void part(
            AbstractMockHttpServletRequestBuilder<?> request, String name, String type, String content) {
        MockMultipartFile file = new MockMultipartFile(name, "x.csv", type, content.getBytes(StandardCharsets.UTF_8));
        ((MockMultipartHttpServletRequestBuilder) request).file(file);
    }

    private static String name(MethodParameter parameter) {
        RequestParam asked = parameter.getParameterAnnotation(RequestParam.class);
        String named = asked == null ? "" : asked.name();
        return named.isEmpty() ? String.valueOf(parameter.getParameterName()) : named;
    }

    private static String json(Type type) {
        return JSON.writeValueAsString(value(type));
    }

    private static Object value(Type type) {
        if (type instanceof ParameterizedType generic && generic.getRawType() instanceof Class<?> raw) {
            return Collection.class.isAssignableFrom(raw) ? List.of() : Map.of();
        }
        return type instanceof Class<?> one ? value(one) : "x";
    }

    private static Object value(Class<?> type) {
        if (type.isRecord()) {
            return value(type.getRecordComponents());
        }
        if (type.isEnum()) {
            return ((Enum<?>) type.getEnumConstants()[0]).name();
        }
        if (type == boolean.class || type == Boolean.class) {
            return false;
        }
        if (type.isPrimitive() || Number.class.isAssignableFrom(type)) {
            return 1;
        }
        return Map.<Class<?>, Object>of(
                        LocalDate.class,
                        DAY.toString(),
                        Instant.class,
                        DAY + "T09:00:00Z",
                        ZoneId.class,
                        "Europe/London",
                        UUID.class,
                        new UUID(0, 1).toString())
                .getOrDefault(type, "x");
    }

    private static Map<String, Object> value(RecordComponent[] components) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (RecordComponent component : components) {
            if (!isNullable(component.getAnnotatedType())) {
                values.put(component.getName(), value(component.getGenericType()));
            }
        }
        return values;
    }

    private static boolean isNullable(AnnotatedElement type) {
        return type.isAnnotationPresent(Nullable.class);
    }
}
