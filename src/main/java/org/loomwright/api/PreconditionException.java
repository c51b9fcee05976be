package org.loomwright.api;

import org.springframework.http.HttpStatus;

/** A header that makes a request safe is missing or malformed. */
final class PreconditionException extends RuntimeException {

    private final HttpStatus status;
    private final String type;

    private PreconditionException(HttpStatus status, String type, String message) {
        super(message);
        this.status = status;
        this.type = type;
    }

    static PreconditionException ifMatchMissing() {
        return new PreconditionException(
                HttpStatus.PRECONDITION_REQUIRED,
                "if-match-missing",
                "Send If-Match with the ETag of the version that your change was made from.");
    }

    static PreconditionException ifMatchMalformed(String header) {
        return new PreconditionException(
                HttpStatus.BAD_REQUEST,
                "if-match-malformed",
                "If-Match must be one ETag as it was answered, for example \"3\"; was %s."
                        .formatted(header));
    }

    static PreconditionException keyMalformed() {
        return new PreconditionException(
                HttpStatus.BAD_REQUEST,
                "idempotency-key-malformed",
                "Idempotency-Key must be 1 to 100 printable ASCII characters.");
    }

    HttpStatus status() {
        return status;
    }

    String type() {
        return type;
    }
}
