package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Parses JSON by the letter of RFC 8259: no NaN, no comments, no name twice in one object, nothing after the end, bounded depth
 * and bounded numbers. Decimals keep every digit.
 */
public final class StrictJson {

    private static final int DEEPEST = 32;
    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_STRING = 100_000;

    /** A revision of the largest loom has less; every token needs memory many times its size. */
    private static final int MOST_TOKENS = 5_000_000;

    /** What the parser says about its own settings, which do not concern the sender. */
    private static final Pattern INTERNALS =
            Pattern.compile(" \\((?:start marker at|bound as) .*|: enable `.*|, from `[^`]*`");

    private static final JsonMapper MAPPER =
            JsonMapper.builder(
                            JsonFactory.builder()
                                    .streamReadConstraints(
                                            StreamReadConstraints.builder()
                                                    .maxNestingDepth(DEEPEST)
                                                    .maxNumberLength(LONGEST_NUMBER)
                                                    .maxStringLength(LONGEST_STRING)
                                                    .maxTokenCount(MOST_TOKENS)
                                                    .build())
                                    .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .build();

    private StrictJson() {}

    /**
     * @param bytes JSON in UTF-8
     * @return the parsed tree, or where and why it is not JSON
     */
    public static Outcome<JsonNode> parse(byte[] bytes) {
        try {
            JsonNode node = MAPPER.readTree(bytes);
            return node == null || node.isMissingNode()
                    ? malformed("The body is empty; it must be one JSON object.")
                    : Outcome.accepted(node);
        } catch (JacksonException e) {
            return malformed(
                    "The body is not valid JSON%s: %s"
                            .formatted(
                                    place(e.getLocation()),
                                    INTERNALS.matcher(e.getOriginalMessage()).replaceAll("")));
        } catch (NumberFormatException e) {
            // Jackson lets this one through where an exponent does not fit an int.
            return malformed("The body has a number that is beyond all measure.");
        }
    }

    /**
     * @param node a tree
     * @return it as JSON text, for storing and for canonical form
     */
    static String write(JsonNode node) {
        return MAPPER.writeValueAsString(node);
    }

    private static Outcome<JsonNode> malformed(String text) {
        return Outcome.rejected(
                List.of(
                        Finding.fault(
                                "json.malformed", new Subject(ThingKind.REQUEST, "", ""), text)));
    }

    private static String place(@Nullable TokenStreamLocation location) {
        return location == null
                ? ""
                : " at line %d, column %d".formatted(location.getLineNr(), location.getColumnNr());
    }
}
