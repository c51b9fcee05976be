package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.testing.HttpTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.net.http.HttpRequest.BodyPublishers;
import java.util.Map;

/** Addresses, parameters, methods and headers that make no sense are answered with a problem document, in English everywhere. */
@HttpTest
class OddRequestIntegrationTest {

    private static final String NOWHERE = "00000000-0000-4000-8000-000000000000";

    private final ApiClient api;
    private final StoredRows rows;
    private Map<String, Long> before = Map.of();

    @Autowired
    OddRequestIntegrationTest(@LocalServerPort int port, JdbcClient jdbc) {
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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api",
                "/api/",
                "/api/nothing",
                "/api/looms/",
                "/api/looms//",
                "/api/looms/" + NOWHERE + "/nothing",
                "/error"
            })
    void findsNothingAtAnUnknownAddress(String path) {
        api.get(path).expectProblem(404, "http-404");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/looms/" + NOWHERE,
                "/api/looms/" + NOWHERE + "/analysis",
                "/api/looms/" + NOWHERE + "/drawing.svg",
                "/api/specifications/" + NOWHERE,
                "/api/specifications/" + NOWHERE + "/revisions",
                "/api/specifications/" + NOWHERE + "/drawing.svg",
                "/api/work-orders/" + NOWHERE,
                "/api/work-orders/" + NOWHERE + "/moves",
                "/api/work-orders/" + NOWHERE + "/job-sheet.pdf",
                "/api/revisions/abc",
                "/api/revisions/%2e%2e",
                "/api/revisions/a%0ab",
                "/api/revisions/a;b=c/document",
                "/api/differences?from=a&to=b",
                "/api/differences?from=%00&to=%00"
            })
    void findsNothingByAnIdThatNothingHas(String path) {
        api.get(path).expectProblem(404, "not-found");
    }

    @Test
    void findsNothingByAVeryLongId() {
        api.get("/api/revisions/" + "a".repeat(6_000)).expectProblem(404, "not-found");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/looms/x",
                "/api/looms/x/drawing.svg",
                "/api/specifications/x/analysis",
                "/api/work-orders/x/job-sheet.pdf",
                "/api/looms?size=many",
                "/api/looms?size=99999999999"
            })
    void refusesAMalformedParameter(String path) {
        api.get(path).expectProblem(400, "malformed-parameter");
    }

    @ParameterizedTest
    @CsvSource({
        "/api/looms?size=0, page.size-out-of-range",
        "/api/looms?size=201, page.size-out-of-range",
        "/api/looms?after=, page.after-malformed",
        "/api/looms?after=now, page.after-malformed",
        "/api/looms?after=2026-01-01T00:00:00Z_x, page.after-malformed",
        "/api/looms?after=%2B999999999-01-01T00:00:00Z_" + NOWHERE + ", page.after-malformed",
        "/api/specifications?after=-999999999-01-01T00:00:00Z_"
                + NOWHERE
                + ", page.after-malformed",
        "/api/looms?colour=%00, loom.colour-unknown",
        "/api/looms?colour=gn, loom.colour-unknown",
        "/api/looms?wireSize=%00, loom.size-unknown",
        "/api/looms?wireSize=9/9, loom.size-unknown",
        "/api/looms?colour=G&wireSize=14/0.30, page.filters-clash",
        "/api/work-orders?status=%00, work-order.status-unknown",
        "/api/work-orders?status=AWAITING_LOOM, work-order.status-unknown"
    })
    void refusesAParameterThatMakesNoSense(String path, String rule) {
        api.get(path).expectProblem(422, "invalid-content").expectFault(rule, "");
    }

    @Test
    void asksForAParameterThatIsMissing() {
        assertThat(api.get("/api/differences").expectProblem(400, "http-400").field("detail"))
                .contains("from");
    }

    /** The server itself refuses these, before the program sees them, and would do so in the language that is asked for. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/looms/%00",
                "/api/revisions/%00",
                "/api/revisions/..%2f..%2f",
                "/api/revisions/%ff",
                "/api/revisions/%zz",
                "/api/looms/%5c",
                "/api/looms/|",
                "/api/looms/../../../etc"
            })
    void answersWithAProblemWhereTheServerItselfRefuses(String path) {
        Answer answer = api.raw("GET", path).expectProblem(400, "http-400");
        assertThat(answer.field("title")).isEqualTo("Bad Request");
    }

    @Test
    void answersWithAProblemWhereTheHeadIsTooLong() {
        api.raw("GET", "/api/revisions/" + "a".repeat(20_000)).expectProblem(400, "http-400");
    }

    @ParameterizedTest
    @CsvSource({
        "DELETE, /api/looms",
        "PATCH, /api/looms/" + NOWHERE,
        "POST, /api/looms/" + NOWHERE,
        "PUT, /api/work-orders/" + NOWHERE,
        "DELETE, /api/revisions/abc",
        "TRACE, /api/looms"
    })
    void refusesAMethodThatIsNotThere(String method, String path) {
        Answer answer = api.raw(method, path).expectProblem(405, "http-405");
        assertThat(answer.header("Allow")).isNotEmpty();
    }

    @Test
    void refusesABodyThatDoesNotSayThatItIsJson() {
        api.send("POST", "/api/looms", BodyPublishers.ofString("{}"))
                .expectProblem(415, "http-415");
        api.send("POST", "/api/looms", BodyPublishers.ofString("{}"), "Content-Type", "text/plain")
                .expectProblem(415, "http-415");
        api.send("POST", "/api/looms", BodyPublishers.ofString("{}"), "Content-Type", "nonsense")
                .expectProblem(415, "http-415");
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/xml", "image/png", "nonsense"})
    void saysThatItHasNoOtherForm(String accept) {
        api.get("/api/looms", "Accept", accept).expectProblem(406, "http-406");
    }

    @Test
    void tellsAPictureTagInProblemFormThatThereIsNoPicture() {
        api.get("/api/looms/" + NOWHERE + "/drawing.svg", "Accept", "image/*")
                .expectProblem(404, "not-found");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/api/nothing", "/api/looms/x", "/api/differences"})
    void speaksEnglishToEverybody(String path) {
        assertThat(api.get(path, "Accept-Language", "tr").text())
                .isEqualTo(api.get(path, "Accept-Language", "en").text())
                .isEqualTo(api.get(path, "Accept-Language", "de").text());
    }
}
