package org.ohmstead.web;

import jakarta.servlet.http.HttpServletRequest;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.ProblemDetail;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.ResponseBody;

/** What nobody foresaw: logged, and answered below /api with a problem too; pages go to the error page. */
@ControllerAdvice
@Order(Ordered.LOWEST_PRECEDENCE)
class Unexpected {

    private static final Logger LOG = LoggerFactory.getLogger(Unexpected.class);

    @ExceptionHandler
    @ResponseBody
    ProblemDetail internal(Exception e, HttpServletRequest request) throws Exception {
        if (!Problems.isApi(request)) {
            throw e;
        }
        LOG.error("{} {} failed", request.getMethod(), request.getRequestURI(), e);
        return ProblemKind.INTERNAL.with("The fault is on our side and has been written to the log. Try again later.");
    }
}
