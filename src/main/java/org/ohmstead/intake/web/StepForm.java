package org.ohmstead.intake.web;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.repair.Step;
import org.ohmstead.intake.repair.StepKind;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** A repair as it is asked for: its kind and its arguments by name, from a request's body or a form. */
@Component
class StepForm {

    private final JsonMapper json;

    StepForm(JsonMapper json) {
        this.json = json;
    }

    /** @throws Refused when an argument is missing or is not of its kind */
    Step step(Map<String, ?> asked) {
        StepKind kind = kind(asked.get("kind"));
        Map<String, Object> arguments = new HashMap<>(asked);
        arguments.values().removeIf(value -> value == null || value.equals(""));
        if (kind == StepKind.FIX_READING) {
            arguments.putIfAbsent("strap", "LINK".equals(arguments.get("what")) ? 1 : 0);
        }
        try {
            return json.convertValue(arguments, kind.type());
        } catch (JacksonException e) {
            throw refused(kind, e);
        }
    }

    /** The fields by which that step is asked for. */
    @SuppressWarnings("unchecked")
    Map<String, Object> fields(Step step) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("kind", StepKind.of(step));
        fields.putAll(json.convertValue(step, Map.class));
        return fields;
    }

    static String reason(Map<String, ?> asked) {
        Object reason = asked.get("reason");
        return reason == null ? "" : reason.toString();
    }

    private static StepKind kind(@Nullable Object word) {
        try {
            return StepKind.valueOf(String.valueOf(word));
        } catch (IllegalArgumentException unknown) {
            throw new Refused("\"kind\" is one of: " + Arrays.toString(StepKind.values()) + ".");
        }
    }

    private static Refused refused(StepKind kind, JacksonException e) {
        for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof Refused refused) {
                return refused;
            }
        }
        return new Refused("The repair " + kind + " lacks an argument, or one of them is not of its kind.");
    }
}
