package org.loomwright.exchange;

import org.erdtman.jcs.JsonCanonicalizer;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * The one canonical form of a document (RFC 8785, JSON Canonicalization Scheme) and its content hash.
 *
 * <p>Source: A. Rundgren, B. Jordan, S. Erdtman, RFC 8785 (2020); SHA-256 after FIPS 180-4.
 *
 * @param text the document in canonical form
 */
public record CanonicalJson(String text) {

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /**
     * @param json a document
     * @return its canonical form
     */
    public static CanonicalJson of(JsonNode json) {
        try {
            return new CanonicalJson(
                    new JsonCanonicalizer(StrictJson.write(json)).getEncodedString());
        } catch (IOException e) {
            throw new UncheckedIOException("a tree that was built here is not canonical JSON", e);
        }
    }

    /** @return the canonical form in UTF-8 */
    public byte[] bytes() {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** @return SHA-256 of the canonical form in 64 lower-case hexadecimal digits */
    public String hash() {
        return sha256(bytes());
    }

    /**
     * @param text anything
     * @return whether it could be a hash, by its form
     */
    public static boolean isHash(String text) {
        return HASH.matcher(text).matches();
    }

    /**
     * @param bytes anything
     * @return its SHA-256 in 64 lower-case hexadecimal digits
     */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
