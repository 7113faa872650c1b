package org.ohmstead.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.TypeMismatchException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.resource.NoResourceFoundException;

/** Requests that reach no page and no resource because of how they are addressed: mistyped, cut off, out of date. */
@ControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class Misaddressed {

    @ExceptionHandler(NoResourceFoundException.class)
    @Nullable
    ResponseEntity<ProblemDetail> nothing(HttpServletRequest request, HttpServletResponse response) throws IOException {
        return Problems.answer(ProblemKind.NOT_FOUND, "There is nothing at this address.", request, response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> mistyped(
            TypeMismatchException e, HttpServletRequest request, HttpServletResponse response) throws IOException {
        String detail = "“" + e.getValue() + "” cannot stand for “" + e.getPropertyName() + "” in this address.";
        return Problems.answer(ProblemKind.MALFORMED, detail, request, response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> cutOff(
            MissingServletRequestParameterException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        String detail = "This address needs “" + e.getParameterName() + "”, which was left out.";
        return Problems.answer(ProblemKind.MALFORMED, detail, request, response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> otherMethod(
            HttpRequestMethodNotSupportedException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        String[] accepted = e.getSupportedMethods();
        String instead = accepted == null ? "" : " " + String.join(", ", accepted) + " is.";
        if (accepted != null) {
            response.setHeader(HttpHeaders.ALLOW, String.join(", ", accepted));
        }
        return Problems.answer(
                ProblemKind.NOT_ACCEPTED, e.getMethod() + " is not accepted here." + instead, request, response);
    }
}
