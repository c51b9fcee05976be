package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.document.pdf.PdfPages;
import org.loomwright.exchange.DemoFiles;
import org.loomwright.exchange.StrictJson;
import org.loomwright.testing.HttpTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;

/** A workshop's own figures go into every figure of a specification, are frozen with it and are printed on the sheet. */
@HttpTest
class OwnFiguresIntegrationTest {

    private static final String OWN =
            """
            {"overrides": [{"table": "conductor-sizes", "row": "14/.012", "column": "outsideDiameterMm",
                "value": "%s", "note": "measured on our reel"}]}
            """;

    private final ApiClient api;
    private final JsonNode stock = DemoFiles.json(DemoFiles.MAIN);

    @Autowired
    OwnFiguresIntegrationTest(@LocalServerPort int port) {
        api = new ApiClient(port);
    }

    private static JsonNode json(String text) {
        return StrictJson.parse(text.getBytes(StandardCharsets.UTF_8))
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    private ObjectNode wishes(String settings) {
        String loom = api.post("/api/looms", stock).expect(201).header("Location");
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("loomId", loom.substring(loom.lastIndexOf('/') + 1));
        body.put("title", "own figures");
        body.set("amendments", JsonNodeFactory.instance.arrayNode());
        body.set("settings", json(settings));
        return body;
    }

    private String begin(String settings) {
        return api.post("/api/specifications", wishes(settings)).expect(201).header("Location");
    }

    private static BigDecimal thickest(JsonNode analysis) {
        return analysis.get("segments")
                .valueStream()
                .map(segment -> segment.at("/after/tightDiameterMm").decimalValue())
                .max(BigDecimal::compareTo)
                .orElseThrow();
    }

    @Test
    void aThickerReelMakesAThickerLoomAndIsFrozenWithIt() {
        JsonNode usual = api.get(begin("{}") + "/analysis").expect(200).json();
        String specification = begin(OWN.formatted("4"));
        JsonNode own = api.get(specification + "/analysis").expect(200).json();
        assertThat(thickest(own)).isGreaterThan(thickest(usual));

        ObjectNode by = JsonNodeFactory.instance.objectNode().put("by", "restorer");
        String hash =
                api.post(specification + "/revisions", by, "If-Match", "\"1\"")
                        .expect(201)
                        .field("hash");
        JsonNode frozen = api.get("/api/revisions/" + hash + "/document").expect(200).json();
        assertThat(frozen.at("/settings/overrides/0/value").stringValue()).isEqualTo("4");
        assertThat(sheet(hash))
                .contains("Set by the workshop", "outsideDiameterMm of 14/.012 4")
                .contains("measured on our reel");
    }

    private String sheet(String hash) {
        ObjectNode terms =
                JsonNodeFactory.instance
                        .objectNode()
                        .put("revisionHash", hash)
                        .put("customer", "Orla Fennimore (invented)")
                        .put("workshop", "Tenter Lane Loom Works")
                        .put("by", "workshop");
        String order = api.post("/api/work-orders", terms).expect(201).header("Location");
        byte[] pdf = api.get(order + "/job-sheet.pdf").expect(200).body();
        return String.join(" ", PdfPages.texts(pdf));
    }

    @Test
    void aFigureThatCannotStandIsRefusedWithItsPlace() {
        api.post("/api/specifications", wishes(OWN.formatted("thick")))
                .expect(422)
                .expectFault("settings.override-value", "/settings/overrides/0/value");
    }
}
