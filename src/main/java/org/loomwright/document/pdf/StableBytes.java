package org.loomwright.document.pdf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes out of a finished file what the PDF library draws by lot: the file's identifier and the six letters before the name of each
 * font subset. Both are replaced by as many characters, so that every offset in the file stays right. Streams are compressed and
 * hold neither.
 */
final class StableBytes {

    private static final Pattern IDENTIFIER =
            Pattern.compile("/ID ?\\[<([0-9a-fA-F]{32})><([0-9a-fA-F]{32})>]");
    private static final Pattern SUBSET = Pattern.compile("/([A-Z]{6})\\+(Liberation[A-Za-z-]+)");
    private static final int IDENTIFIER_BYTES = 16;
    private static final int LETTERS = 6;
    private static final int ALPHABET = 26;

    private StableBytes() {}

    static byte[] settle(byte[] file, String identity) {
        StringBuilder text = new StringBuilder(new String(file, StandardCharsets.ISO_8859_1));
        replaceIdentifier(text, identity);
        replaceSubsetNames(text);
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void replaceIdentifier(StringBuilder text, String identity) {
        byte[] digest = sha256(identity);
        String identifier = HexFormat.of().formatHex(digest, 0, IDENTIFIER_BYTES);
        Matcher matcher = IDENTIFIER.matcher(text.toString());
        if (!matcher.find()) {
            throw new IllegalStateException("the file has no identifier in the expected form");
        }
        do {
            text.replace(matcher.start(1), matcher.end(1), identifier);
            text.replace(matcher.start(2), matcher.end(2), identifier);
        } while (matcher.find());
    }

    /** Letters by the font's name, so that the order in which the library writes fonts does not matter. */
    private static void replaceSubsetNames(StringBuilder text) {
        Map<String, String> letters = new TreeMap<>();
        Matcher matcher = SUBSET.matcher(text.toString());
        while (matcher.find()) {
            String stable = letters.computeIfAbsent(matcher.group(2), StableBytes::letters);
            text.replace(matcher.start(1), matcher.end(1), stable);
        }
    }

    private static String letters(String font) {
        byte[] digest = sha256(font);
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < LETTERS; i++) {
            letters.append((char) ('A' + Byte.toUnsignedInt(digest[i]) % ALPHABET));
        }
        return letters.toString();
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
