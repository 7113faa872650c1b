package org.ohmstead.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Locale;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import tools.jackson.databind.json.JsonMapper;

/** The catalogue of everything the API may answer instead of success (RFC 9457). The type words are stable. */
enum ProblemKind {
    NOT_SIGNED_IN(HttpStatus.UNAUTHORIZED, "Not signed in"),
    NOT_ALLOWED(HttpStatus.FORBIDDEN, "Not allowed"),
    NOT_FOUND(HttpStatus.NOT_FOUND, "Not found"),
    CONFLICT(HttpStatus.CONFLICT, "Contradicts what is there"),
    REFUSED(HttpStatus.UNPROCESSABLE_CONTENT, "Can't be taken as it is"),
    TOO_LARGE(HttpStatus.CONTENT_TOO_LARGE, "Too large"),
    MALFORMED(HttpStatus.BAD_REQUEST, "Not understood"),
    NOT_ACCEPTED(HttpStatus.METHOD_NOT_ALLOWED, "Not accepted here"),
    INTERNAL(HttpStatus.INTERNAL_SERVER_ERROR, "Something went wrong");

    private static final JsonMapper JSON = JsonMapper.shared();

    private final HttpStatus status;
    private final String title;

    ProblemKind(HttpStatus status, String title) {
        this.status = status;
        this.title = title;
    }

    HttpStatus status() {
        return status;
    }

    ProblemDetail with(String detail) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setType(type());
        problem.setTitle(title);
        return problem;
    }

    void write(HttpServletRequest request, HttpServletResponse response, String detail) throws IOException {
        var body = new java.util.LinkedHashMap<String, Object>();
        body.put("type", type().toString());
        body.put("title", title);
        body.put("status", status.value());
        body.put("detail", detail);
        body.put("instance", request.getRequestURI());
        response.setStatus(status.value());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        JSON.writeValue(response.getOutputStream(), body);
    }

    private URI type() {
        return URI.create(
                "urn:ohmstead:problem:" + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
