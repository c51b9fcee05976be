package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.exchange.LoomWriter;
import org.loomwright.testing.HttpTest;
import org.loomwright.testing.TestLooms;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;

/** Entity tags, preconditions, and requests that are sent twice. */
@HttpTest
class ConditionsIntegrationTest {

    private static final int AT_ONCE = 8;

    private final ApiClient api;
    private final StoredRows rows;

    @Autowired
    ConditionsIntegrationTest(@LocalServerPort int port, JdbcClient jdbc) {
        api = new ApiClient(port);
        rows = new StoredRows(jdbc);
    }

    private static ObjectNode loom(String name) {
        return LoomWriter.write(TestLooms.front().document()).put("name", name);
    }

    private String record(String name) {
        return api.post("/api/looms", loom(name)).expect(201).header("Location");
    }

    /** Sends so many requests at the same moment. */
    private static List<Answer> atOnce(IntFunction<Answer> request) {
        CountDownLatch start = new CountDownLatch(1);
        List<CompletableFuture<Answer>> answers =
                IntStream.range(0, AT_ONCE)
                        .mapToObj(
                                i ->
                                        CompletableFuture.supplyAsync(
                                                () -> {
                                                    await(start);
                                                    return request.apply(i);
                                                },
                                                task -> Thread.ofPlatform().start(task)))
                        .toList();
        start.countDown();
        return answers.stream().map(CompletableFuture::join).toList();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void aChangeNeedsTheVersionThatItWasMadeFrom() {
        String loom = record("conditions");

        api.put(loom, loom("x")).expectProblem(428, "if-match-missing");
        api.put(loom, loom("x"), "If-Match", "\"7\"").expectProblem(412, "stale-version");
        assertThat(api.get(loom).json().at("/loom/name").stringValue()).isEqualTo("conditions");
        api.put(loom, loom("x"), "If-Match", "\"1\"").expect(200);
        Answer stale = api.put(loom, loom("y"), "If-Match", "\"1\"");
        stale.expectProblem(412, "stale-version");
        assertThat(stale.json().get("currentVersion").intValue()).isEqualTo(2);
        assertThat(api.get(loom).json().at("/loom/name").stringValue()).isEqualTo("x");
    }

    @Test
    void aTagThatWasMadeWeakOnTheWayCountsLikeItsStrongOne() {
        api.put(record("weak"), loom("x"), "If-Match", "W/\"1\"").expect(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"*", "1", "\"x\"", "\"1\", \"2\"", "\"-1\"", "\"9999999999999999999\""})
    void aMalformedVersionIsRefused(String tag) {
        api.put(record("malformed tag"), loom("x"), "If-Match", tag)
                .expectProblem(400, "if-match-malformed");
    }

    @Test
    void ofChangesAtTheSameTimeOneIsMadeAndTheOthersAreTold() {
        String loom = record("race");

        List<Answer> answers = atOnce(i -> api.put(loom, loom("racer " + i), "If-Match", "\"1\""));

        assertThat(answers).filteredOn(answer -> answer.status() == 200).hasSize(1);
        assertThat(answers)
                .filteredOn(answer -> answer.status() != 200)
                .allSatisfy(answer -> answer.expectProblem(412, "stale-version"));
        assertThat(api.get(loom).header("ETag")).isEqualTo("\"2\"");
    }

    @Test
    void ofMovesAtTheSameTimeOneIsMadeAndTheOthersAreTold() {
        String hash = api.get("/api/work-orders").json().at("/items/0/revisionHash").stringValue();
        ObjectNode terms =
                JsonNodeFactory.instance
                        .objectNode()
                        .put("revisionHash", hash)
                        .put("customer", "c")
                        .put("workshop", "w")
                        .put("by", "b");
        String order = api.post("/api/work-orders", terms).expect(201).header("Location");
        ObjectNode move = JsonNodeFactory.instance.objectNode().put("to", "quoted").put("by", "b");

        List<Answer> answers = atOnce(i -> api.post(order + "/moves", move, "If-Match", "\"1\""));

        assertThat(answers).filteredOn(answer -> answer.status() == 200).hasSize(1);
        assertThat(answers)
                .filteredOn(answer -> answer.status() != 200)
                .allSatisfy(answer -> answer.expectProblem(412, "stale-version"));
        assertThat(api.get(order + "/moves").json()).hasSize(2);
    }

    @Test
    void theSameRequestSentTwiceIsDoneOnce() {
        String first =
                api.post("/api/looms", loom("twice"), "Idempotency-Key", "twice").field("id");
        Map<String, Long> before = rows.counts();
        Answer again =
                api.post("/api/looms", loom("twice"), "Idempotency-Key", "twice").expect(201);

        assertThat(again.field("id")).isEqualTo(first);
        assertThat(again.header("Location")).isEqualTo("/api/looms/" + first);
        assertThat(rows.counts()).isEqualTo(before);
    }

    @Test
    void theSameRequestSentManyTimesAtOnceIsDoneOnce() {
        long before = rows.count("loom");

        List<Answer> answers =
                atOnce(i -> api.post("/api/looms", loom("at once"), "Idempotency-Key", "at once"));

        assertThat(answers).allMatch(answer -> answer.status() == 201);
        assertThat(answers).extracting(answer -> answer.field("id")).containsOnly(id(answers));
        assertThat(rows.count("loom")).isEqualTo(before + 1);
    }

    private static String id(List<Answer> answers) {
        return answers.getFirst().field("id");
    }

    @Test
    void aKeyServesOneRequestOnly() {
        api.post("/api/looms", loom("one"), "Idempotency-Key", "reused").expect(201);
        Map<String, Long> before = rows.counts();

        api.post("/api/looms", loom("other"), "Idempotency-Key", "reused")
                .expectProblem(422, "idempotency-key-reused");
        assertThat(rows.counts()).isEqualTo(before);
    }

    @Test
    void aRefusedRequestDoesNotUseUpItsKey() {
        api.post("/api/looms", loom(""), "Idempotency-Key", "refused")
                .expectProblem(422, "invalid-content");
        api.post("/api/looms", loom("right"), "Idempotency-Key", "refused").expect(201);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "k\tk"})
    void aMalformedKeyIsRefused(String key) {
        Map<String, Long> before = rows.counts();

        api.post("/api/looms", loom("key"), "Idempotency-Key", key)
                .expectProblem(400, "idempotency-key-malformed");
        api.post("/api/looms", loom("key"), "Idempotency-Key", "k".repeat(101))
                .expectProblem(400, "idempotency-key-malformed");
        assertThat(rows.counts()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/looms/{loom}",
                "/api/looms/{loom}/drawing.svg",
                "/api/looms/{loom}/segments/S1/cross-section.svg",
                "/api/revisions/{hash}",
                "/api/revisions/{hash}/document",
                "/api/revisions/{hash}/analysis",
                "/api/revisions/{hash}/drawing.svg"
            })
    void whatTheCallerHasAlreadyIsNotSentAgain(String template) {
        String loom = record("cached").substring("/api/looms/".length());
        String hash = api.get("/api/work-orders").json().at("/items/0/revisionHash").stringValue();
        String path = template.replace("{loom}", loom).replace("{hash}", hash);
        String tag = api.get(path).expect(200).header("ETag");

        assertThat(tag).matches("(W/)?\"[0-9a-f-]+\"");
        Answer again = api.get(path, "If-None-Match", tag).expect(304);
        assertThat(again.body()).isEmpty();
        assertThat(again.header("ETag")).isEqualTo(tag);
        api.get(path, "If-None-Match", "\"other\"").expect(200);
    }

    @Test
    void aChangedLoomHasAnotherTag() {
        String loom = record("tag");
        String tag = api.get(loom).header("ETag");
        api.put(loom, loom("tag, changed"), "If-Match", tag).expect(200);

        api.get(loom, "If-None-Match", tag).expect(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/document", "/analysis", "/difference", "/drawing.svg"})
    void largeAnswersArePackedForThoseWhoAskForIt(String what) throws IOException {
        String hash = api.get("/api/work-orders").json().at("/items/0/revisionHash").stringValue();
        String path = "/api/revisions/" + hash + what;
        Answer plain = api.get(path).expect(200);
        Answer packed = api.get(path, "Accept-Encoding", "gzip").expect(200);

        assertThat(packed.header("Content-Encoding")).isEqualTo("gzip");
        assertThat(packed.body()).hasSizeLessThan(plain.body().length / 2);
        byte[] unpacked =
                new GZIPInputStream(new ByteArrayInputStream(packed.body())).readAllBytes();
        assertThat(new String(unpacked, StandardCharsets.UTF_8)).isEqualTo(plain.text());
    }

    @Test
    void everythingThatIsMadeIsFoundWhereTheAnswerSays() {
        String loom = record("location");
        ObjectNode wishes =
                JsonNodeFactory.instance
                        .objectNode()
                        .put("loomId", loom.substring("/api/looms/".length()))
                        .put("title", "nothing yet");
        wishes.putArray("amendments");
        String specification =
                api.post("/api/specifications", wishes).expect(201).header("Location");
        ObjectNode by = JsonNodeFactory.instance.objectNode().put("by", "b");
        String revisions = specification + "/revisions";
        String revision =
                api.post(revisions, by, "If-Match", "\"1\"").expect(201).header("Location");

        assertThat(api.get(loom).expect(200).field("id")).isEqualTo(last(loom));
        assertThat(api.get(specification).expect(200).field("id")).isEqualTo(last(specification));
        assertThat(api.get(revision).expect(200).field("hash")).isEqualTo(last(revision));
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
