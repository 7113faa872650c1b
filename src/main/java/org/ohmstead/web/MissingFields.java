package org.ohmstead.web;

import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.util.ReflectionUtils;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.RequestBodyAdviceAdapter;

/**
 * A field that a body's record does not mark nullable must be there. The register looks at its bodies itself: it tells all
 * flaws of an entry at once.
 */
@ControllerAdvice
class MissingFields extends RequestBodyAdviceAdapter {

    private static final String REGISTER = "org.ohmstead.fleet.";

    @Override
    public boolean supports(
            MethodParameter parameter, Type type, Class<? extends HttpMessageConverter<?>> converterType) {
        String controllers = parameter.getContainingClass().getPackageName();
        return parameter.getParameterType().isRecord() && !controllers.startsWith(REGISTER);
    }

    @Override
    public Object afterBodyRead(
            Object body,
            HttpInputMessage message,
            MethodParameter parameter,
            Type type,
            Class<? extends HttpMessageConverter<?>> converterType) {
        missing(body, "").ifPresent(field -> {
            throw new Refused("Give \"" + field + "\".");
        });
        return body;
    }

    /** The first field that is missing in a value that is there, such as {@code items[0].outcome}. */
    private static Optional<String> missing(Object value, String name) {
        if (value instanceof List<?> list) {
            return first(
                    IntStream.range(0, list.size()).mapToObj(i -> missing(list.get(i), true, name + "[" + i + "]")));
        }
        if (!value.getClass().isRecord()) {
            return Optional.empty();
        }
        String before = name.isEmpty() ? "" : name + ".";
        return first(Arrays.stream(value.getClass().getRecordComponents())
                .map(field -> missing(field(value, field), isNullable(field), before + field.getName())));
    }

    private static Optional<String> missing(@Nullable Object value, boolean mayBeMissing, String name) {
        if (value == null) {
            return mayBeMissing ? Optional.empty() : Optional.of(name);
        }
        return missing(value, name);
    }

    private static Optional<String> first(Stream<Optional<String>> all) {
        return all.flatMap(Optional::stream).findFirst();
    }

    private static @Nullable Object field(Object owner, RecordComponent field) {
        ReflectionUtils.makeAccessible(field.getAccessor());
        return ReflectionUtils.invokeMethod(field.getAccessor(), owner);
    }

    private static boolean isNullable(RecordComponent field) {
        return field.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }
}
