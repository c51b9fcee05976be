package org.loomwright.api;

import jakarta.servlet.http.HttpServletRequest;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.Request;
import org.loomwright.exchange.CanonicalJson;
import org.loomwright.exchange.StrictJson;
import org.springframework.stereotype.Component;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** Reads the body of a request, up to a limit, and what marks the request as one that is to be done once. */
@Component
class BodyReader {

    private static final int LIMIT_BYTES = 16 * 1024 * 1024;
    private static final Pattern KEY = Pattern.compile("[\\x20-\\x7e]{1,100}");

    /**
     * A body with what marks its request.
     *
     * @param json the parsed body
     * @param request marks the request
     */
    record Body(JsonNode json, Request request) {}

    /**
     * @param servletRequest the request
     * @return its body as a tree
     * @throws BodyTooLargeException if it is larger than the limit, of which no more is read
     * @throws InvalidRequestException if it is not JSON
     * @throws PreconditionException if its Idempotency-Key is malformed
     */
    Body read(HttpServletRequest servletRequest) throws IOException {
        String key = checkKey(servletRequest.getHeader("Idempotency-Key"));
        byte[] bytes = bytes(servletRequest);
        JsonNode json = InvalidRequestException.orThrow(StrictJson.parse(bytes));
        return new Body(json, new Request(key, hash(servletRequest, bytes)));
    }

    private static @Nullable String checkKey(@Nullable String key) {
        if (key != null && !KEY.matcher(key).matches()) {
            throw PreconditionException.keyMalformed();
        }
        return key;
    }

    private static byte[] bytes(HttpServletRequest request) throws IOException {
        if (request.getContentLengthLong() > LIMIT_BYTES) {
            throw new BodyTooLargeException(LIMIT_BYTES);
        }
        try (InputStream stream = request.getInputStream()) {
            byte[] bytes = stream.readNBytes(LIMIT_BYTES + 1);
            if (bytes.length > LIMIT_BYTES) {
                throw new BodyTooLargeException(LIMIT_BYTES);
            }
            return bytes;
        }
    }

    private static String hash(HttpServletRequest request, byte[] bytes) {
        String head = request.getMethod() + " " + request.getRequestURI() + "\n";
        byte[] headBytes = head.getBytes(StandardCharsets.UTF_8);
        byte[] all = new byte[headBytes.length + bytes.length];
        System.arraycopy(headBytes, 0, all, 0, headBytes.length);
        System.arraycopy(bytes, 0, all, headBytes.length, bytes.length);
        return CanonicalJson.sha256(all);
    }
}
