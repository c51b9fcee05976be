package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.exchange.AmendmentWriter;
import org.loomwright.exchange.LoomWriter;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.HttpTest;
import org.loomwright.testing.TestLooms;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

import java.util.List;

/** The electrical side over HTTP: scenarios, checks, colours, finder, kits, open questions. */
@HttpTest
class ElectricsIntegrationTest {

    private static final String SPECIFICATIONS = "/api/specifications";

    private final ApiClient api;

    @Autowired
    ElectricsIntegrationTest(@LocalServerPort int port) {
        api = new ApiClient(port);
    }

    private String demoLoom() {
        return api.post("/api/looms", LoomWriter.write(DemoLooms.main().document()))
                .expect(201)
                .header("Location");
    }

    private String specification(String loom, boolean withAdditions) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("loomId", loom.substring(loom.lastIndexOf('/') + 1));
        body.put("title", "electrics");
        body.set(
                "amendments",
                AmendmentWriter.write(withAdditions ? DemoLooms.additions() : List.of()));
        return api.post(SPECIFICATIONS, body).expect(201).header("Location");
    }

    private static List<String> texts(JsonNode list, String field) {
        return list.valueStream().map(item -> item.get(field).stringValue()).toList();
    }

    @Test
    void calculatesWhatAMeterWouldShow() {
        String scenario =
                """
                {"name":"side lamps","closed":{"LIGHT-SWITCH":["SIDE"]},"engine":"off","conductorsC":20}
                """;
        JsonNode readings = api.post(demoLoom() + "/readings", scenario).expect(200).json();

        assertThat(readings.get("drawnA").doubleValue()).isBetween(2.0, 3.0);
        assertThat(readings.at("/pointsV/TAILLAMP-OS~1FEED").doubleValue()).isBetween(11.0, 12.6);
        assertThat(readings.at("/pointsV/STOPLAMP-OS~1FEED").doubleValue()).isZero();
    }

    @Test
    void plugsTwoLoomsOfOneVehicleTogether() {
        String main = demoLoom();
        String engine =
                api.post("/api/looms", LoomWriter.write(DemoLooms.engine().document()))
                        .expect(201)
                        .header("Location");
        String ignition =
                """
                {"name":"ignition","closed":{"IGN-SWITCH":["IGN"]},"engine":"off","conductorsC":20}
                """;
        String with = "/readings?with=" + engine.substring(engine.lastIndexOf('/') + 1);
        JsonNode readings = api.post(main + with, ignition).expect(200).json();

        String toDistributor = DemoLooms.engine().name() + ":W005";
        JsonNode wire =
                readings.get("wires")
                        .valueStream()
                        .filter(it -> it.get("wire").stringValue().equals(toDistributor))
                        .findFirst()
                        .orElseThrow();
        assertThat(Math.abs(wire.get("currentA").doubleValue())).isBetween(3.0, 4.0);

        String same = "/readings?with=" + main.substring(main.lastIndexOf('/') + 1);
        api.post(main + same, ignition)
                .expectProblem(422, "invalid-content")
                .expectFault("electrical.looms-do-not-join", "");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    {"LIGHT-SWITCH":["PARK"]} | 20   | electrical.switch-position-impossible |
                    {"NO-SWITCH":["SIDE"]}    | 20   | electrical.switch-position-impossible |
                    {}                        | 2000 | settings.out-of-range                 | /conductorsC
                    """)
    void refusesAStateThatTheLoomCannotBeIn(
            String closed, String celsius, String rule, String pointer) {
        String scenario =
                "{\"name\":\"x\",\"closed\":%s,\"engine\":\"off\",\"conductorsC\":%s}"
                        .formatted(closed, celsius);
        api.post(demoLoom() + "/readings", scenario)
                .expectProblem(422, "invalid-content")
                .expectFault(rule, pointer == null ? "" : pointer);
    }

    @Test
    void reportsWhatTheAdditionsDo() {
        String specification = specification(demoLoom(), true);
        JsonNode report = api.get(specification + "/electrics").expect(200).json();

        assertThat(report.get("scenarios")).hasSizeGreaterThanOrEqualTo(12);
        assertThat(texts(report.get("findings"), "code"))
                .contains(
                        "electrical.charge-negative",
                        "electrical.fuse-marking",
                        "electrical.unfused-new",
                        "electrical.unfused-original",
                        "electrical.voltage-drop",
                        "electrical.short-unfused");
        assertThat(report.get("findings").valueStream().filter(it -> it.has("limit")))
                .isNotEmpty()
                .allSatisfy(
                        finding -> {
                            assertThat(finding.has("margin")).isTrue();
                            assertThat(finding.at("/limit/unit").stringValue()).isNotEmpty();
                        });
    }

    @Test
    void auditsTheStockLoomAndProposesColours() {
        String specification = specification(demoLoom(), true);
        JsonNode colours = api.get(specification + "/colours").expect(200).json();

        assertThat(texts(colours.get("audit"), "id"))
                .containsExactlyInAnyOrder("W014", "W024", "W045");
        assertThat(texts(colours.get("proposals"), "wire")).contains("W118", "W102", "W123");
    }

    @Test
    void findsAWireAndSaysWhatToMeasure() {
        JsonNode found =
                api.get(demoLoom() + "/wire-finder?colour=green+with+a+dark+tracer&place=tail")
                        .expect(200)
                        .json();

        assertThat(found.get("wires")).isNotEmpty();
        assertThat(found.at("/wires/0/expected")).isNotEmpty();
        api.get(demoLoom() + "/wire-finder")
                .expectProblem(422, "invalid-content")
                .expectFault("finder.nothing-asked", "");
    }

    @Test
    void asksPlansAndAddsAKit() {
        String specification = specification(demoLoom(), false);
        JsonNode asked = api.get(specification + "/kits/reversing-lamps").expect(200).json();
        assertThat(texts(asked.get("questions"), "id")).contains("lamps", "watts", "switch");

        String plan = specification + "/kits/reversing-lamps/plan?otherwiseUsual=true";
        JsonNode planned = api.post(plan, "{\"watts\":21}").expect(200).json();
        assertThat(planned.get("amendments")).hasSizeGreaterThan(5);
        assertThat(texts(planned.get("notes"), "rule")).contains("feed", "fuse", "size", "colour");
        assertThat(api.get(specification).json().get("amendments")).isEmpty();

        String add = specification + "/kits/reversing-lamps?otherwiseUsual=true";
        api.post(add, "{}").expectProblem(428, "if-match-missing");
        Answer added = api.post(add, "{}", "If-Match", "\"1\"").expect(200);
        assertThat(added.header("ETag")).isEqualTo("\"2\"");
        assertThat(api.get(specification).json().get("amendments"))
                .hasSameSizeAs(added.json().get("amendments"));
        api.post(add, "{}", "If-Match", "\"1\"").expect(412);
        api.get(specification + "/electrics").expect(200);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    reversing-lamps | {}                                  | kit.answer-missing
                    reversing-lamps | {"watts":-21}                       | kit.answer-impossible
                    reversing-lamps | {"watts":100000}                    | kit.answer-impossible
                    reversing-lamps | {"lamp-at":"N99"}                   | kit.answer-impossible
                    reversing-lamps | {"colour":"red"}                    | kit.answer-unknown
                    reversing-lamps | {"lamps":[]}                        | json.wrong-type
                    wings           | {}                                  | kit.unknown
                    """)
    void refusesAKitWithItsReasonsAndChangesNothing(String kit, String answers, String rule) {
        String specification = specification(demoLoom(), false);
        Answer refused =
                api.post(specification + "/kits/" + kit, answers, "If-Match", "\"1\"").expect(422);

        assertThat(texts(refused.json().get("errors"), "rule")).contains(rule);
        assertThat(api.get(specification).json().get("version").intValue()).isEqualTo(1);
        assertThat(api.get(specification).json().get("amendments")).isEmpty();
    }

    @Test
    void refusesAKitWhereTheLoomHasNoFeedForIt() {
        String loom =
                api.post("/api/looms", LoomWriter.write(TestLooms.front().document()))
                        .expect(201)
                        .header("Location");
        Answer refused =
                api.post(
                                specification(loom, false)
                                        + "/kits/reversing-lamps?otherwiseUsual=true",
                                "{}",
                                "If-Match",
                                "\"1\"")
                        .expect(422);

        assertThat(texts(refused.json().get("errors"), "rule"))
                .anyMatch(code -> code.startsWith("kit."));
    }

    @Test
    void keepsWhatTheCustomerAccepts() {
        String loom = demoLoom();
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("loomId", loom.substring(loom.lastIndexOf('/') + 1));
        body.put("title", "accepted");
        body.putArray("amendments");
        ObjectNode accepted = body.putArray("accepted").addObject();
        accepted.put("code", "electrical.charge-negative");
        accepted.put("kind", "loom");
        accepted.put("id", "");
        accepted.put("reason", "A summer car.");
        String specification = api.post(SPECIFICATIONS, body).expect(201).header("Location");

        assertThat(api.get(specification).json().get("accepted")).isEqualTo(body.get("accepted"));
        String hash =
                api.post(specification + "/revisions", "{\"by\":\"customer\"}", "If-Match", "\"1\"")
                        .expect(201)
                        .field("hash");
        assertThat(api.get("/api/revisions/" + hash + "/document").json().get("accepted"))
                .isEqualTo(body.get("accepted"));
    }

    @Test
    void saysWhatIsOpenAndHowFarTheAdditionsAreOfThePeriod() {
        String specification = specification(demoLoom(), true);

        JsonNode open = api.get(specification + "/open-questions").expect(200).json();
        assertThat(open.at("/total/percent").intValue()).isBetween(1, 99);
        assertThat(open.at("/next/question").stringValue()).endsWith("?");
        JsonNode period = api.get(specification + "/period").expect(200).json();
        assertThat(period.get("wayBack")).isNotEmpty();
        assertThat(texts(period.get("items"), "judgement")).contains("as-period");
    }
}
