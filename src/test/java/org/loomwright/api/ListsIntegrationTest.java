package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.exchange.LoomWriter;
import org.loomwright.testing.HttpTest;
import org.loomwright.testing.TestLooms;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Lists page by key: what is added meanwhile neither repeats nor hides anything. */
@HttpTest
class ListsIntegrationTest {

    private final ApiClient api;

    @Autowired
    ListsIntegrationTest(@LocalServerPort int port) {
        api = new ApiClient(port);
    }

    private String record(String name, String colour, String size) {
        ObjectNode loom = LoomWriter.write(TestLooms.front().document()).put("name", name);
        LoomJson.at(loom, "/wires/0").put("colour", colour).put("size", size);
        return api.post("/api/looms", loom).expect(201).field("id");
    }

    private JsonNode page(String list, String after) {
        String query =
                after.isEmpty() ? "" : "after=" + URLEncoder.encode(after, StandardCharsets.UTF_8);
        return api.get(list + query).expect(200).json();
    }

    private static List<String> ids(JsonNode page) {
        return page.get("items").valueStream().map(item -> item.get("id").stringValue()).toList();
    }

    private List<String> walk(String list, Runnable betweenPages) {
        List<String> ids = new ArrayList<>();
        String after = "";
        do {
            JsonNode page = page(list, after);
            ids.addAll(ids(page));
            after = page.get("nextAfter").isNull() ? "" : page.get("nextAfter").stringValue();
            betweenPages.run();
        } while (!after.isEmpty());
        return ids;
    }

    @Test
    void everyLoomIsListedOnceThoughOthersAreAddedMeanwhile() {
        List<String> recorded = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            recorded.add(record("listed " + i, "G", "14/0.30"));
        }

        List<String> walked = walk("/api/looms?size=2&", () -> record("meanwhile", "G", "14/0.30"));

        assertThat(walked)
                .doesNotHaveDuplicates()
                .startsWith(recorded.reversed().toArray(String[]::new));
        assertThat(walked).isSubsetOf(walk("/api/looms?size=200&", () -> {}));
    }

    @ParameterizedTest
    @CsvSource({"/api/specifications", "/api/work-orders"})
    void theOtherListsPageInTheSameWay(String list) {
        assertThat(walk(list + "?size=1&", () -> {}))
                .isNotEmpty()
                .isEqualTo(walk(list + "?size=200&", () -> {}));
    }

    @Test
    void filtersFindEveryLoomThatHasSuchAWireAndNoOther() {
        String purple = record("purple", "PS", "14/0.30");
        String thick = record("thick", "G", "84/0.30");

        assertThat(walk("/api/looms?size=1&colour=PS&", () -> {})).containsExactly(purple);
        assertThat(walk("/api/looms?wireSize=84/0.30&", () -> {}))
                .contains(thick)
                .doesNotContain(purple);
        assertThat(walk("/api/looms?colour=P&", () -> {})).doesNotContain(purple);
    }

    @Test
    void aChangedLoomIsFoundByWhatItHasNow() {
        ObjectNode loom = LoomWriter.write(TestLooms.front().document());
        LoomJson.at(loom, "/wires/0").put("colour", "SP");
        String place = api.post("/api/looms", loom).expect(201).header("Location");
        assertThat(walk("/api/looms?colour=SP&", () -> {})).hasSize(1);

        LoomJson.at(loom, "/wires/0").put("colour", "SB");
        api.put(place, loom, "If-Match", "\"1\"").expect(200);

        assertThat(walk("/api/looms?colour=SP&", () -> {})).isEmpty();
        assertThat(walk("/api/looms?colour=SB&", () -> {})).hasSize(1);
    }

    @Test
    void workOrdersAreFoundByWhereTheyStand() {
        assertThat(walk("/api/work-orders?status=on-hold&", () -> {})).isEmpty();
        for (JsonNode order :
                api.get("/api/work-orders?status=enquiry").expect(200).json().get("items")) {
            assertThat(order.get("status").stringValue()).isEqualTo("enquiry");
        }
    }
}
