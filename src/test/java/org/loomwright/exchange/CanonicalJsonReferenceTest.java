package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import tools.jackson.databind.JsonNode;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** The sample of RFC 8785, sections 3.2.2 and 3.2.3; status FOUND (the RFC's own text). SHA-256 after FIPS 180-4, "abc". */
class CanonicalJsonReferenceTest {

    private static CanonicalJson canonical(String json) {
        JsonNode node =
                StrictJson.parse(json.getBytes(StandardCharsets.UTF_8))
                        .orElseThrow(reasons -> new IllegalArgumentException(reasons.toString()));
        return CanonicalJson.of(node);
    }

    @Test
    void theSampleOfTheStandardComesOutAsPrintedThere() {
        String sample =
                """
                {
                  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }\
                """;
        assertThat(canonical(sample).text())
                .isEqualTo(
                        """
                        {"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],\
                        "string":"\u20ac$\\u000f\\nA'B\\"\\\\\\\\\\"/"}\
                        """);
    }

    @Test
    void namesAreOrderedByTheirUtf16Units() {
        assertThat(canonical("{\"\\ufb33\":1,\"\\ud83d\\ude00\":2,\"a\":3}").text())
                .isEqualTo("{\"a\":3,\"\ud83d\ude00\":2,\"\ufb33\":1}");
    }

    @Test
    void waysToWriteTheSameNumberAreOne() {
        assertThat(List.of("{\"a\":1e2}", "{\"a\":100}", "{\"a\":100.000}", "{ \"a\" : 1E+2 }"))
                .extracting(json -> canonical(json).hash())
                .containsOnly(canonical("{\"a\":100}").hash());
    }

    @Test
    void theHashIsSha256() {
        assertThat(CanonicalJson.sha256("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
