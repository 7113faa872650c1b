package org.ohmstead.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;

/** Maps refusals to answers: problem details below /api, the error page with the same sentence elsewhere. */
@ControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class Problems {

    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> notFound(NotFound e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        return answer(ProblemKind.NOT_FOUND, message(e), request, response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> conflict(Conflict e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        return answer(ProblemKind.CONFLICT, message(e), request, response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> overtaken(
            OptimisticLockingFailureException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        LOG.debug("Overtaken by another change", e);
        return answer(
                ProblemKind.CONFLICT,
                "Somebody else changed this in the meantime. Reload, look at their change, and make yours again.",
                request,
                response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> refused(Refused e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        if (!isApi(request)) {
            response.sendError(ProblemKind.REFUSED.status().value(), message(e));
            return null;
        }
        ProblemDetail problem = ProblemKind.REFUSED.with(message(e));
        if (!e.flaws().isEmpty()) {
            problem.setProperty("flaws", e.flaws());
        }
        return ResponseEntity.of(problem).build();
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> tooLarge(
            MaxUploadSizeExceededException e, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        LOG.debug("Upload too large", e);
        return answer(
                ProblemKind.TOO_LARGE,
                "The file is larger than this service accepts. Hand in the surveys in several files.",
                request,
                response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> brokenForm(
            MultipartException e, HttpServletRequest request, HttpServletResponse response) throws IOException {
        LOG.debug("Multipart form not understood", e);
        return answer(
                ProblemKind.MALFORMED,
                "The form with the file arrived broken. Send it again, or send the file itself as the body.",
                request,
                response);
    }

    @ExceptionHandler
    @Nullable
    ResponseEntity<ProblemDetail> denied(
            AccessDeniedException e, HttpServletRequest request, HttpServletResponse response) throws IOException {
        return answer(ProblemKind.NOT_ALLOWED, message(e), request, response);
    }

    static @Nullable ResponseEntity<ProblemDetail> answer(
            ProblemKind kind, String detail, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        if (isApi(request)) {
            return ResponseEntity.of(kind.with(detail)).build();
        }
        response.sendError(kind.status().value(), detail);
        return null;
    }

    static boolean isApi(HttpServletRequest request) {
        return request.getRequestURI().startsWith(request.getContextPath() + "/api/");
    }

    private static String message(Exception e) {
        String message = e.getMessage();
        return message == null ? "No more is known." : message;
    }
}
