package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.loomwright.exchange.StrictJson;

import tools.jackson.databind.JsonNode;

import java.net.http.HttpHeaders;
import java.nio.charset.StandardCharsets;

/**
 * What the program answered.
 *
 * @param status HTTP status
 * @param headers its headers
 * @param body its body
 */
record Answer(int status, HttpHeaders headers, byte[] body) {

    String text() {
        return new String(body, StandardCharsets.UTF_8);
    }

    JsonNode json() {
        return StrictJson.parse(body)
                .orElseThrow(reasons -> new IllegalStateException(reasons + " in " + text()));
    }

    /** @return a field of the JSON object that was answered, as text */
    String field(String name) {
        return json().get(name).asString();
    }

    /** @return a header, empty where there is none */
    String header(String name) {
        return headers.firstValue(name).orElse("");
    }

    /** @return itself, having the status that is expected */
    Answer expect(int expected) {
        assertThat(status).as(text()).isEqualTo(expected);
        return this;
    }

    /** @return itself, being a problem document of that status and type which gives nothing away */
    Answer expectProblem(int expected, String type) {
        expect(expected);
        assertThat(header("Content-Type")).isEqualTo("application/problem+json");
        assertThat(field("type")).isEqualTo("urn:loomwright:problem:" + type);
        assertThat(json().get("status").intValue()).isEqualTo(expected);
        assertThat(field("title")).isNotBlank();
        assertThat(text())
                .doesNotContain("org.", "java.", "tools.jackson", "Exception", "SQL", "\\tat ")
                .doesNotContain("StreamRead", "JsonRead", "REDACTED");
        return this;
    }

    /** @return itself, one of whose faults is of that rule and at that place */
    Answer expectFault(String rule, String pointer) {
        assertThat(json().get("errors"))
                .as(text())
                .anySatisfy(
                        fault -> {
                            assertThat(fault.get("rule").stringValue()).isEqualTo(rule);
                            assertThat(fault.get("pointer").stringValue()).isEqualTo(pointer);
                            assertThat(fault.get("detail").stringValue()).isNotBlank();
                        });
        return this;
    }
}
