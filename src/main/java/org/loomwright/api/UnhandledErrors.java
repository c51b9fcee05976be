package org.loomwright.api;

import io.swagger.v3.oas.annotations.Hidden;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Answers with a problem document where a request was refused before it came to a controller, or nothing else could be answered. */
@Hidden
@RestController
class UnhandledErrors implements ErrorController {

    @RequestMapping("${server.error.path:${error.path:/error}}")
    void answer(HttpServletRequest request, HttpServletResponse response) throws IOException {
        HttpStatus status = status(request);
        response.setStatus(status.value());
        response.setContentType("application/problem+json");
        response.getOutputStream()
                .write(
                        """
                        {"type":"%shttp-%d","title":"%s","status":%d}\
                        """
                                .formatted(
                                        Problems.TYPE,
                                        status.value(),
                                        status.getReasonPhrase(),
                                        status.value())
                                .getBytes(StandardCharsets.UTF_8));
    }

    /** Somebody who asks for the error page itself finds nothing. */
    private static HttpStatus status(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code
                ? orInternal(HttpStatus.resolve(code))
                : HttpStatus.NOT_FOUND;
    }

    private static HttpStatus orInternal(@Nullable HttpStatus status) {
        return status == null ? HttpStatus.INTERNAL_SERVER_ERROR : status;
    }
}
