package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.document.pdf.PdfPages;
import org.loomwright.exchange.CanonicalJson;
import org.loomwright.exchange.DemoFiles;
import org.loomwright.testing.HttpTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** One job from the stock loom to the dispatched one, all of it over HTTP, with the invented demonstration. */
@HttpTest
class MainJobIntegrationTest {

    private static final String BOOT_LEG = "S39";
    private static final List<String> LIFE =
            List.of(
                    "quoted",
                    "accepted",
                    "awaiting-loom",
                    "loom-received",
                    "in-work",
                    "at-hold-point",
                    "in-work",
                    "testing",
                    "ready",
                    "dispatched",
                    "closed");

    private final ApiClient api;
    private final JsonNode stock = DemoFiles.json(DemoFiles.MAIN);
    private final JsonNode additions = DemoFiles.json(DemoFiles.ADDITIONS);

    @Autowired
    MainJobIntegrationTest(@LocalServerPort int port) {
        api = new ApiClient(port);
    }

    @Test
    void aJobRunsFromTheStockLoomToTheClosedWorkOrder() {
        String loom = recordTheLoom();
        String specification = beginTheSpecification(loom);
        JsonNode analysis = api.get(specification + "/analysis").expect(200).json();
        theAnalysisTellsWhatTheAdditionsDo(analysis);
        theDifferenceNamesEveryAddition(specification);
        thePicturesCanBeDrawn(specification);
        String hash = freeze(specification);
        String order = openTheWorkOrder(hash);
        Answer sheet = api.get(order + "/job-sheet.pdf").expect(200);
        theJobSheetSaysWhatToDo(sheet, api.get(order).field("number"), hash, analysis);
        changingTheLoomChangesNothingThatWasAgreed(loom, order, hash, sheet);
        theWorkOrderGoesThroughItsLife(order);
    }

    private String recordTheLoom() {
        Answer loom = api.post("/api/looms", stock).expect(201);
        assertThat(loom.header("ETag")).isEqualTo("\"1\"");
        assertThat(loom.json().at("/loom/wires").size()).isEqualTo(stock.get("wires").size());
        return loom.header("Location");
    }

    private ObjectNode wishes() {
        ObjectNode wishes = JsonNodeFactory.instance.objectNode();
        wishes.set("title", additions.get("title"));
        wishes.set("amendments", additions.get("amendments"));
        return wishes;
    }

    private String beginTheSpecification(String loom) {
        ObjectNode body = wishes().put("loomId", loom.substring(loom.lastIndexOf('/') + 1));
        Answer begun = api.post("/api/specifications", body).expect(201);
        assertThat(begun.json().get("amendments")).hasSameSizeAs(additions.get("amendments"));
        return begun.header("Location");
    }

    private void theAnalysisTellsWhatTheAdditionsDo(JsonNode analysis) {
        JsonNode boot = find(analysis.get("segments"), "segment", BOOT_LEG);
        assertThat(boot.at("/before/wireCount").intValue())
                .isEqualTo(LoomJson.countWiresThrough(stock, BOOT_LEG));
        assertThat(boot.at("/after/wireCount").intValue())
                .isEqualTo(
                        boot.at("/before/wireCount").intValue()
                                + count(boot.get("added"))
                                - count(boot.get("removed")));
        assertThat(covered(boot, "before")).isLessThan(BigDecimal.TEN);
        assertThat(covered(boot, "after")).isGreaterThan(BigDecimal.TEN);
        assertThat(analysis.get("findings"))
                .filteredOn(finding -> finding.get("severity").stringValue().equals("fault"))
                .singleElement()
                .extracting(finding -> finding.get("text").stringValue())
                .asString()
                .contains(BOOT_LEG, "O26", "boot bulkhead grommet", "clear 10 mm")
                .contains(covered(boot, "before") + " mm", covered(boot, "after") + " mm");
    }

    private static BigDecimal covered(JsonNode segment, String when) {
        JsonNode bundle = segment.get(when);
        assertThat(bundle.get("tightDiameterMm").decimalValue())
                .isGreaterThanOrEqualTo(bundle.get("tightLowerBoundMm").decimalValue())
                .isLessThanOrEqualTo(bundle.get("laidDiameterMm").decimalValue());
        return bundle.get("coveredDiameterMm").decimalValue();
    }

    private static int count(JsonNode classes) {
        return classes.valueStream().mapToInt(part -> part.get("count").intValue()).sum();
    }

    private static JsonNode find(JsonNode parts, String key, String value) {
        return parts.valueStream()
                .filter(part -> part.get(key).stringValue().equals(value))
                .findFirst()
                .orElseThrow();
    }

    private Set<String> addedWires() {
        return additions
                .get("amendments")
                .valueStream()
                .filter(amendment -> amendment.get("kind").stringValue().equals("add-wire"))
                .map(amendment -> amendment.at("/wire/id").stringValue())
                .collect(Collectors.toSet());
    }

    private void theDifferenceNamesEveryAddition(String specification) {
        JsonNode entries = api.get(specification + "/difference").expect(200).json().get("entries");
        Set<String> added =
                entries.valueStream()
                        .filter(entry -> entry.get("kind").stringValue().equals("wire"))
                        .filter(entry -> entry.get("change").stringValue().equals("added"))
                        .map(entry -> entry.get("id").stringValue())
                        .collect(Collectors.toSet());
        assertThat(added).hasSizeGreaterThan(20).isEqualTo(addedWires());
    }

    private void thePicturesCanBeDrawn(String specification) {
        Answer drawing = api.get(specification + "/drawing.svg").expect(200);
        assertThat(drawing.header("Content-Type")).isEqualTo("image/svg+xml");
        String words = SvgWords.of(drawing.body());
        for (JsonNode amendment : additions.get("amendments")) {
            if (amendment.has("breakout")) {
                assertThat(words).contains(amendment.at("/breakout/name").stringValue());
            }
        }
        stock.get("nodes")
                .valueStream()
                .map(node -> node.get("name").stringValue())
                .filter(name -> name.endsWith("breakout"))
                .forEach(name -> assertThat(words).contains(name));
        String cut = specification + "/segments/" + BOOT_LEG + "/cross-section.svg";
        assertThat(SvgWords.of(api.get(cut).expect(200).body())).contains("before", "after");
    }

    private String freeze(String specification) {
        ObjectNode by = JsonNodeFactory.instance.objectNode().put("by", "restorer");
        Answer frozen = api.post(specification + "/revisions", by, "If-Match", "\"1\"").expect(201);
        String hash = frozen.field("hash");
        assertThat(frozen.header("Location")).isEqualTo("/api/revisions/" + hash);
        assertThat(CanonicalJson.sha256(document(hash))).isEqualTo(hash);
        return hash;
    }

    private byte[] document(String hash) {
        return api.get("/api/revisions/" + hash + "/document").expect(200).body();
    }

    private String openTheWorkOrder(String hash) {
        ObjectNode terms =
                JsonNodeFactory.instance
                        .objectNode()
                        .put("revisionHash", hash)
                        .put("customer", "Orla Fennimore (invented)")
                        .put("workshop", "Tenter Lane Loom Works")
                        .put("by", "workshop");
        Answer order = api.post("/api/work-orders", terms).expect(201);
        assertThat(order.field("status")).isEqualTo("enquiry");
        return order.header("Location");
    }

    private void theJobSheetSaysWhatToDo(
            Answer sheet, String number, String hash, JsonNode analysis) {
        assertThat(sheet.header("Content-Type")).isEqualTo("application/pdf");
        List<String> pages = PdfPages.texts(sheet.body());
        assertThat(pages).hasSizeGreaterThan(5);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains(number, hash, "Page %d of %d".formatted(i + 1, pages.size()));
        }
        String text = String.join(" ", pages);
        for (String wire : addedWires()) {
            JsonNode cut = find(analysis.get("cutLengths"), "wire", wire);
            assertThat(text)
                    .containsPattern(
                            "%s [a-z ]+ %s .{1,60} %s "
                                    .formatted(
                                            wire,
                                            cut.get("alongLoomMm").asString(),
                                            cut.get("cutMm").asString()));
        }
    }

    private void changingTheLoomChangesNothingThatWasAgreed(
            String loom, String order, String hash, Answer sheet) {
        byte[] document = document(hash);
        ObjectNode changed = (ObjectNode) DemoFiles.json(DemoFiles.MAIN);
        LoomJson.at(changed, "/segments/3").put("lengthMm", 999);
        changed.put("name", "measured again");
        Answer second = api.put(loom, changed, "If-Match", "\"1\"").expect(200);

        assertThat(second.header("ETag")).isEqualTo("\"2\"");
        assertThat(second.json().at("/loom/segments/3/lengthMm").intValue()).isEqualTo(999);
        assertThat(api.get(order).field("revisionHash")).isEqualTo(hash);
        assertThat(document(hash)).isEqualTo(document);
        assertThat(api.get(order + "/job-sheet.pdf").expect(200).body()).isEqualTo(sheet.body());
    }

    private void theWorkOrderGoesThroughItsLife(String order) {
        move(order, "ready", "\"1\"").expectProblem(409, "illegal-move");
        JsonNode allowed = move(order, "closed", "\"1\"").json().get("allowed");
        assertThat(allowed).extracting(JsonNode::stringValue).containsExactly("quoted", "declined");
        String version = "\"1\"";
        for (String next : LIFE) {
            Answer moved = move(order, next, version).expect(200);
            assertThat(moved.field("status")).isEqualTo(next);
            version = moved.header("ETag");
        }
        assertThat(api.get(order).json().get("allowedMoves")).isEmpty();
        assertThat(api.get(order + "/moves").json())
                .extracting(move -> move.get("to").stringValue())
                .startsWith("enquiry")
                .endsWith(LIFE.toArray(String[]::new));
    }

    private Answer move(String order, String to, String version) {
        ObjectNode move = JsonNodeFactory.instance.objectNode().put("to", to).put("by", "workshop");
        return api.post(order + "/moves", move, "If-Match", version);
    }
}
