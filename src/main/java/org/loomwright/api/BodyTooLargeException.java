package org.loomwright.api;

import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;

import java.io.IOException;
import java.io.Serial;

/** A body is larger than anything that makes sense here. */
final class BodyTooLargeException extends IOException {

    @Serial private static final long serialVersionUID = 1L;

    private final long limitBytes;

    BodyTooLargeException(long limitBytes) {
        super("a request body is larger than " + limitBytes + " bytes");
        this.limitBytes = limitBytes;
    }

    ProblemDetail problem() {
        ProblemDetail problem =
                Problems.problem(
                        HttpStatus.CONTENT_TOO_LARGE, "body-too-large", "The body is too large");
        problem.setDetail("A request body may have at most %d bytes.".formatted(limitBytes));
        problem.setProperty("limitBytes", limitBytes);
        return problem;
    }
}
