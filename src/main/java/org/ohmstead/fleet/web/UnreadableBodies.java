package org.ohmstead.fleet.web;

import java.net.URI;
import java.util.stream.Collectors;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import tools.jackson.core.JacksonException;

/** Says which field of a register body could not be read. */
@RestControllerAdvice(basePackageClasses = UnreadableBodies.class)
@Order(Ordered.HIGHEST_PRECEDENCE)
class UnreadableBodies {

    @ExceptionHandler
    ProblemDetail unreadable(HttpMessageNotReadableException e) {
        String detail =
                e.getCause() instanceof JacksonException json ? detail(json) : "The body is missing. Send JSON.";
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, detail);
        problem.setType(URI.create("urn:ohmstead:problem:malformed"));
        problem.setTitle("Not understood");
        return problem;
    }

    private static String detail(JacksonException e) {
        String field = e.getPath().stream()
                .map(JacksonException.Reference::getPropertyName)
                .collect(Collectors.joining("."));
        String reason = String.valueOf(e.getOriginalMessage()).replaceAll("`?org\\.ohmstead[\\w.$]*`?", "the body");
        if (reason.startsWith("Cannot map `null`")) {
            return "The field " + field + " is missing; it needs a number.";
        }
        return field.isEmpty() ? "The body is no sound JSON: " + reason : "The field " + field + ": " + reason;
    }
}
