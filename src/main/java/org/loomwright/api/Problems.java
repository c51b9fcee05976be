package org.loomwright.api;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.FiguresChangedException;
import org.loomwright.app.IllegalMoveException;
import org.loomwright.app.KeyReusedException;
import org.loomwright.app.NotFoundException;
import org.loomwright.app.RefusalException;
import org.loomwright.app.StaleVersionException;
import org.loomwright.app.TooMuchWorkException;
import org.loomwright.core.finding.Finding;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import org.springframework.web.servlet.resource.NoResourceFoundException;

import java.net.URI;
import java.util.List;

/**
 * Turns what went wrong into a problem document (RFC 9457). The {@code type} of each kind of problem is stable; {@code errors}
 * lists every fault with its rule, its JSON pointer into what was sent, and words for a person.
 */
@RestControllerAdvice
class Problems extends ResponseEntityExceptionHandler {

    static final String TYPE = "urn:loomwright:problem:";
    private static final int MOST_ERRORS = 200;

    /**
     * One fault in what was sent.
     *
     * @param rule stable name of the rule
     * @param pointer JSON pointer into what was sent, empty when the fault is not in one place
     * @param kind what sort of thing it is about
     * @param id which one, empty when it has no id
     * @param detail words for a person
     */
    record Fault(String rule, String pointer, String kind, String id, String detail) {

        static Fault of(Finding finding) {
            return new Fault(
                    finding.code(),
                    finding.subject().pointer(),
                    finding.subject().kind().words(),
                    finding.subject().id(),
                    finding.text());
        }
    }

    @ExceptionHandler
    ProblemDetail invalid(InvalidRequestException invalid) {
        List<Finding> faults = invalid.faults();
        ProblemDetail problem =
                invalid.isMalformed()
                        ? problem(HttpStatus.BAD_REQUEST, "malformed-json", "Not JSON")
                        : problem(
                                HttpStatus.UNPROCESSABLE_CONTENT,
                                "invalid-content",
                                "The content is wrong");
        problem.setDetail(
                faults.size() == 1
                        ? faults.getFirst().text()
                        : faults.size() + " faults; nothing was stored.");
        problem.setProperty("faultCount", faults.size());
        problem.setProperty("errors", faults.stream().limit(MOST_ERRORS).map(Fault::of).toList());
        return problem;
    }

    @ExceptionHandler
    ProblemDetail precondition(PreconditionException missing) {
        ProblemDetail problem =
                problem(missing.status(), missing.type(), "The request lacks a condition");
        problem.setDetail(missing.getMessage());
        return problem;
    }

    @ExceptionHandler
    ProblemDetail tooLarge(BodyTooLargeException tooLarge) {
        return tooLarge.problem();
    }

    @ExceptionHandler
    ProblemDetail refused(RefusalException refusal) {
        return switch (refusal) {
            case NotFoundException e -> notFound(e);
            case StaleVersionException e -> stale(e);
            case IllegalMoveException e -> illegalMove(e);
            case KeyReusedException e -> keyReused(e);
            case FiguresChangedException e -> figuresChanged(e);
            case TooMuchWorkException e -> tooMuchWork(e);
        };
    }

    private static ProblemDetail notFound(NotFoundException e) {
        ProblemDetail problem = problem(HttpStatus.NOT_FOUND, "not-found", "Not found");
        problem.setDetail("There is no %s %s.".formatted(e.thing(), e.id()));
        return problem;
    }

    private static ProblemDetail stale(StaleVersionException e) {
        ProblemDetail problem =
                problem(HttpStatus.PRECONDITION_FAILED, "stale-version", "Changed meanwhile");
        problem.setDetail(
                "%s %s is at version %d now; your change was made from version %d. Read it again."
                        .formatted(e.thing(), e.id(), e.actual(), e.expected()));
        problem.setProperty("currentVersion", e.actual());
        return problem;
    }

    private static ProblemDetail illegalMove(IllegalMoveException e) {
        ProblemDetail problem = problem(HttpStatus.CONFLICT, "illegal-move", "Not an allowed move");
        problem.setDetail(
                "Work order %s stands at %s and cannot go to %s."
                        .formatted(e.number(), e.from().words(), e.to().words()));
        problem.setProperty("allowed", e.allowed().stream().map(StatusWords::of).toList());
        return problem;
    }

    private static ProblemDetail keyReused(KeyReusedException e) {
        ProblemDetail problem =
                problem(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "idempotency-key-reused",
                        "Idempotency-Key used before");
        problem.setDetail(
                "Idempotency-Key '%s' was used for another request; take a new one."
                        .formatted(e.key()));
        return problem;
    }

    private static ProblemDetail tooMuchWork(TooMuchWorkException e) {
        ProblemDetail problem =
                problem(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "too-much-work",
                        "Too large to be analysed here");
        problem.setDetail(e.detail());
        return problem;
    }

    private static ProblemDetail figuresChanged(FiguresChangedException e) {
        ProblemDetail problem =
                problem(HttpStatus.CONFLICT, "figures-changed", "The figures would differ");
        problem.setDetail(
                "Revision %s, calculated by this version of the program, gives other figures than were frozen. The frozen ones are at /api/revisions/%s."
                        .formatted(e.hash(), e.hash()));
        return problem;
    }

    @ExceptionHandler
    ProblemDetail parameter(MethodArgumentTypeMismatchException mismatch) {
        ProblemDetail problem =
                problem(HttpStatus.BAD_REQUEST, "malformed-parameter", "Malformed parameter");
        problem.setDetail("The parameter '%s' is malformed.".formatted(mismatch.getName()));
        return problem;
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleNoResourceFoundException(
            NoResourceFoundException ex,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        ex.getBody().setDetail("There is nothing at /%s.".formatted(ex.getResourcePath()));
        return super.handleNoResourceFoundException(ex, headers, status, request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMediaTypeNotSupported(
            HttpMediaTypeNotSupportedException ex,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        ex.getBody().setDetail("Send the body as application/json.");
        return super.handleHttpMediaTypeNotSupported(ex, headers, status, request);
    }

    /** What Spring itself refuses gets a stable type too, and the form of a problem even where no form was acceptable. */
    @Override
    protected ResponseEntity<Object> createResponseEntity(
            @Nullable Object body, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        if (body instanceof ProblemDetail problem) {
            problem.setType(URI.create(TYPE + "http-" + status.value()));
        }
        return ResponseEntity.status(status)
                .headers(headers)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(body);
    }

    @ExceptionHandler
    ProblemDetail unexpected(Exception unexpected) {
        logger.error("A request failed", unexpected);
        ProblemDetail problem =
                problem(HttpStatus.INTERNAL_SERVER_ERROR, "internal", "Something went wrong here");
        problem.setDetail("This is a fault of the program, not of your request. It is in the log.");
        return problem;
    }

    static ProblemDetail problem(HttpStatus status, String type, String title) {
        ProblemDetail problem = ProblemDetail.forStatus(status);
        problem.setType(URI.create(TYPE + type));
        problem.setTitle(title);
        return problem;
    }
}
