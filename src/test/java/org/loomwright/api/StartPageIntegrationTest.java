package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.testing.HttpTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The start page shows what is there, and every link on it leads somewhere. */
@HttpTest
class StartPageIntegrationTest {

    private static final Pattern LINK = Pattern.compile("href=\"([^\"]+)\"");

    private final ApiClient api;

    @Autowired
    StartPageIntegrationTest(@LocalServerPort int port) {
        api = new ApiClient(port);
    }

    @Test
    void theStartPageListsTheNewestWithACaution() {
        Answer page = api.get("/", "Accept", "text/html").expect(200);

        assertThat(page.header("Content-Type")).startsWith("text/html");
        api.get("/api/looms?size=20")
                .json()
                .get("items")
                .forEach(loom -> assertThat(page.text()).contains(loom.get("name").stringValue()));
        api.get("/api/work-orders?size=20")
                .json()
                .get("items")
                .forEach(
                        order ->
                                assertThat(page.text())
                                        .contains(order.get("number").stringValue()));
        assertThat(page.text())
                .contains("start a fire", "Disconnect the battery", "not a clearance")
                .contains("lang=\"en-GB\"");
    }

    @Test
    void everyLinkOnTheStartPageLeadsSomewhere() {
        Set<String> links =
                LINK.matcher(api.get("/").text())
                        .results()
                        .map(link -> link.group(1))
                        .collect(Collectors.toSet());
        assertThat(links).hasSizeGreaterThan(10);
        for (String link : links) {
            Answer answer = api.get(link);
            if (answer.status() == 302) {
                answer = api.get(answer.header("Location"));
            }
            assertThat(answer.status()).as(link).isEqualTo(200);
        }
    }
}
