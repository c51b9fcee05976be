package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.exchange.LoomWriter;
import org.loomwright.exchange.StrictJson;
import org.loomwright.testing.HttpTest;
import org.loomwright.testing.TestLooms;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

import java.io.ByteArrayInputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Whatever is wrong in a body is refused with its rule and its place, and nothing of it is stored. */
@HttpTest
class BadInputIntegrationTest {

    private static final int FIFTY_MEGABYTES = 50 * 1024 * 1024;
    private static final String LOOMS = "/api/looms";
    private static final String RIGHT = LoomWriter.write(TestLooms.front().document()).toString();

    private final ApiClient api;
    private final StoredRows rows;
    private Map<String, Long> before = Map.of();

    @Autowired
    BadInputIntegrationTest(@LocalServerPort int port, JdbcClient jdbc) {
        api = new ApiClient(port);
        rows = new StoredRows(jdbc);
    }

    @BeforeEach
    void countRows() {
        before = rows.counts();
    }

    @AfterEach
    void nothingWasStored() {
        assertThat(rows.counts()).isEqualTo(before);
    }

    /** @return the front loom with one field of one of its parts replaced */
    private static ObjectNode front(String place, String field, String value) {
        ObjectNode loom = (ObjectNode) json(RIGHT);
        LoomJson.at(loom, place.equals("/") ? "" : place).set(field, json(value));
        return loom;
    }

    private static JsonNode json(String text) {
        return StrictJson.parse(text.getBytes(StandardCharsets.UTF_8))
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    /segments/0          | to        | "N1"         | loom.segment-loop     | /segments/0
                    /segments/1          | from      | "N5"         | loom.ring             | /nodes/2
                    /segments/4          | from      | "N6"         | loom.segment-loop     | /segments/4
                    /segments/4          | to        | "N5"         | loom.second-root      | /nodes/5
                    /segments/4          | to        | "N5"         | loom.node-reached-twice | /nodes/4
                    /wires/0/a           | device    | "C9"         | loom.device-unknown   | /wires/0/a
                    /wires/0/a           | point     | "99"         | loom.point-unknown    | /wires/0/a
                    /wires/1             | id        | "W1"         | loom.id-twice         | /wires/1
                    /nodes/1             | id        | "N1"         | loom.id-twice         | /nodes/1
                    /segments/0          | lengthMm  | -600         | loom.length-not-positive | /segments/0
                    /segments/0          | lengthMm  | 10000000     | loom.length-not-sane  | /segments/0
                    /segments/0          | lengthMm  | 1e300        | json.number-too-fine  | /segments/0/lengthMm
                    /segments/0          | lengthMm  | "600"        | json.wrong-type       | /segments/0/lengthMm
                    /segments/0          | lengthMm  | null         | json.missing-field    | /segments/0/lengthMm
                    /segments/0          | finish    | []           | json.wrong-type       | /segments/0/finish
                    /segments/0          | colour    | "red"        | json.unknown-field    | /segments/0/colour
                    /                    | a/b~c     | 1            | json.unknown-field    | /a~1b~0c
                    /wires/0             | colour    | "XQ"         | loom.colour-unknown   | /wires/0
                    /wires/0             | colour    | "green"      | loom.colour-unknown   | /wires/0/colour
                    /wires/0             | size      | "9/9"        | loom.size-unknown     | /wires/0
                    /wires/0/a           | terminal  | "glue"       | loom.terminal-unknown | /wires/0/a
                    /wires/0             | b         | {"device":"C1","point":"1","terminal":"screw-end"} | loom.wire-to-itself | /wires/0
                    /                    | name      | "N\\u0000"   | json.text-malformed   | /name
                    /                    | name      | "N\\ud800"   | json.text-malformed   | /name
                    /                    | nodes     | {}           | json.wrong-type       | /nodes
                    /                    | nodes     | [null]       | json.wrong-type       | /nodes/0
                    /                    | formatVersion | 2        | json.format-version   | /formatVersion
                    """)
    void refusesALoomWithItsRuleAndPlace(
            String place, String field, String value, String rule, String pointer) {
        api.post(LOOMS, front(place, field, value))
                .expectProblem(422, "invalid-content")
                .expectFault(rule, pointer);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{",
                "{\"name\":NaN}",
                "{\"name\":1,\"name\":2}",
                "{\"\\ud800\":1}",
                "{} {}",
                "{'name':1}",
                "nonsense"
            })
    void refusesWhatIsNotJson(String body) {
        api.post(LOOMS, body)
                .expectProblem(400, "malformed-json")
                .expectFault("json.malformed", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "[]", "1", "\"loom\""})
    void refusesJsonThatIsNoObject(String body) {
        api.post(LOOMS, body)
                .expectProblem(422, "invalid-content")
                .expectFault("json.wrong-type", "");
    }

    @Test
    void refusesDeepNestingWithoutReadingOn() {
        api.post(LOOMS, "[".repeat(1_000_000)).expectProblem(400, "malformed-json");
    }

    @Test
    void refusesBytesThatAreNotUtf8() {
        byte[] bytes = {'{', '"', (byte) 0xff, '"', ':', '1', '}'};
        api.sendJson("POST", LOOMS, BodyPublishers.ofByteArray(bytes))
                .expectProblem(400, "malformed-json");
    }

    @Test
    void tellsTheSenderOfAHugeBodyThatItIsTooLarge() {
        byte[] huge = new byte[FIFTY_MEGABYTES];
        api.sendJson("POST", LOOMS, BodyPublishers.ofByteArray(huge))
                .expectProblem(413, "body-too-large");
    }

    @Test
    void tellsTheSenderOfAHugeBodyOfUnknownLengthThatItIsTooLarge() {
        byte[] huge = new byte[FIFTY_MEGABYTES];
        api.sendJson(
                        "POST",
                        LOOMS,
                        BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(huge)))
                .expectProblem(413, "body-too-large");
    }

    @Test
    void refusesAHundredThousandWiresWhetherTheyFitIntoABodyOrNot() {
        String wire = json(RIGHT).at("/wires/0").toString();
        String shortWire = "{\"id\":\"W1\",\"circuit\":\"x\",\"colour\":\"B\"}";

        api.post(LOOMS, withWires(100_000, wire)).expectProblem(413, "body-too-large");
        Answer answer = api.post(LOOMS, withWires(100_000, shortWire));
        answer.expectProblem(422, "invalid-content")
                .expectFault("json.missing-field", "/wires/0/size");
        assertThat(answer.json().get("errors")).hasSize(200);
        assertThat(answer.body()).hasSizeLessThan(100_000);
    }

    @Test
    void refusesTooManyWiresThatAreRightInThemselves() {
        String wire =
                "{\"id\":\"W%d\",\"circuit\":\"x\",\"colour\":\"B\",\"size\":\"14/0.30\",\"a\":{\"device\":\"C1\",\"point\":\"1\",\"terminal\":\"screw-end\"},\"b\":{\"device\":\"F1\",\"point\":\"1\",\"terminal\":\"screw-end\"},\"condition\":\"good\"}";
        String wires =
                IntStream.range(0, 80_000)
                        .mapToObj(i -> wire.replace("%d", Integer.toString(i)))
                        .collect(Collectors.joining(","));
        api.post(LOOMS, "%s,\"wires\":[%s]}".formatted(withoutWires(), wires))
                .expectProblem(422, "invalid-content")
                .expectFault("loom.too-many", "");
    }

    private static String withWires(int count, String wire) {
        return "%s,\"wires\":[%s]}"
                .formatted(withoutWires(), String.join(",", Collections.nCopies(count, wire)));
    }

    private static String withoutWires() {
        ObjectNode loom = (ObjectNode) json(RIGHT);
        loom.remove("wires");
        String text = loom.toString();
        return text.substring(0, text.length() - 1);
    }

    @Test
    void staysUsableWhenMillionsOfPartsAreWrong() {
        String nodes = String.join(",", Collections.nCopies(2_000_000, "{}"));
        api.post(LOOMS, "{\"nodes\":[" + nodes + "]}").expectProblem(422, "invalid-content");
        String more = String.join(",", Collections.nCopies(5_000_000, "{}"));
        api.post(LOOMS, "{\"nodes\":[" + more + "]}").expectProblem(400, "malformed-json");
    }

    private String demoLoom() {
        return api.get(LOOMS + "?size=1").json().at("/items/0/id").stringValue();
    }

    @Test
    void refusesAnAmendmentOfAWireThatAnEarlierAmendmentRemoved() {
        String amendments =
                """
                [{"id":"A1","kind":"remove-wire","reason":"","wire":"W001"},
                 {"id":"A2","kind":"replace-wire","reason":"","wire":"W001","colour":"N","size":"44/0.30"}]
                """;
        String main = mainLoom();
        api.post("/api/specifications", specification(main, "\"additions\"", amendments))
                .expectProblem(422, "invalid-content")
                .expectFault("amendment.taken-out", "/amendments/1/wire");
    }

    private String mainLoom() {
        return api.get(LOOMS + "?size=200")
                .json()
                .get("items")
                .valueStream()
                .filter(loom -> loom.get("name").stringValue().contains("main loom"))
                .findFirst()
                .orElseThrow()
                .get("id")
                .stringValue();
    }

    private static String specification(String loom, String title, String amendments) {
        return """
        {"loomId":"%s","title":%s,"amendments":%s}\
        """
                .formatted(loom, title, amendments);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    "t"  | null                                            | json.wrong-type    | /amendments
                    "t"  | {}                                              | json.wrong-type    | /amendments
                    "t"  | [{}]                                            | json.missing-field | /amendments/0/kind
                    "t"  | [{"id":"A1","kind":"paint-it"}]                 | json.unknown-word  | /amendments/0/kind
                    "t"  | [{"id":"A1","kind":"remove-wire","wire":"\\u0000"}] | json.text-malformed | /amendments/0/wire
                    "t"  | [{"id":"A1","kind":"remove-wire","wire":"W9","way":1}] | json.unknown-field | /amendments/0/way
                    5    | []                                              | json.wrong-type    | /title
                    " "  | []                                              | json.text-length   | /title
                    null | []                                              | json.missing-field | /title
                    """)
    void refusesASpecificationWithOneFaultForOneMistake(
            String title, String amendments, String rule, String pointer) {
        Answer answer =
                api.post("/api/specifications", specification(demoLoom(), title, amendments))
                        .expectProblem(422, "invalid-content")
                        .expectFault(rule, pointer);
        assertThat(answer.json().get("errors")).as(answer.text()).hasSize(1);
    }

    @Test
    void refusesASpecificationOfALoomThatIsNotThere() {
        api.post("/api/specifications", specification(UUID.randomUUID().toString(), "\"t\"", "[]"))
                .expectProblem(422, "invalid-content")
                .expectFault("specification.loom-unknown", "/loomId");
        api.post("/api/specifications", specification("W1", "\"t\"", "[]"))
                .expectProblem(422, "invalid-content")
                .expectFault("json.id-malformed", "/loomId");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    revisionHash | "0"          | work-order.revision-unknown  | /revisionHash
                    dueDate      | "2020-01-01" | work-order.due-date-not-sane | /dueDate
                    dueDate      | "2020-02-30" | json.day-malformed           | /dueDate
                    dueDate      | 2030         | json.wrong-type              | /dueDate
                    customer     | ""           | json.text-length             | /customer
                    notes        | "\\ud800"    | json.text-malformed          | /notes
                    by           | null         | json.missing-field           | /by
                    price        | 1            | json.unknown-field           | /price
                    """)
    void refusesAWorkOrderWithOneFaultForOneMistake(
            String field, String value, String rule, String pointer) {
        String hash = api.get("/api/work-orders").json().at("/items/0/revisionHash").stringValue();
        ObjectNode terms =
                (ObjectNode)
                        json(
                                """
                                {"revisionHash":"%s","customer":"c","workshop":"w","by":"b"}\
                                """
                                        .formatted(hash));
        terms.set(field, json(value));
        Answer answer =
                api.post("/api/work-orders", terms)
                        .expectProblem(422, "invalid-content")
                        .expectFault(rule, pointer);
        assertThat(answer.json().get("errors")).as(answer.text()).hasSize(1);
    }
}
