package org.loomwright.api;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Talks to the running program as any other program would. */
final class ApiClient {

    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final int port;

    ApiClient(int port) {
        this.port = port;
    }

    Answer get(String path, String... headers) {
        return send("GET", path, BodyPublishers.noBody(), headers);
    }

    /** Sends JSON. */
    Answer post(String path, JsonNode body, String... headers) {
        return post(path, escaped(body), headers);
    }

    /** Sends something that claims to be JSON. */
    Answer post(String path, String body, String... headers) {
        return sendJson("POST", path, BodyPublishers.ofString(body), headers);
    }

    /** Sends JSON. */
    Answer put(String path, JsonNode body, String... headers) {
        return sendJson("PUT", path, BodyPublishers.ofString(escaped(body)), headers);
    }

    /** JSON in ASCII, in which unpaired surrogates come through. */
    private static String escaped(JsonNode json) {
        return json.toString()
                .chars()
                .mapToObj(
                        unit ->
                                unit < 0x7f
                                        ? Character.toString(unit)
                                        : "\\u" + HexFormat.of().toHexDigits((char) unit))
                .collect(Collectors.joining());
    }

    Answer sendJson(String method, String path, BodyPublisher body, String... headers) {
        String[] all = Arrays.copyOf(headers, headers.length + 2);
        all[headers.length] = "Content-Type";
        all[headers.length + 1] = "application/json";
        return send(method, path, body, all);
    }

    Answer send(String method, String path, BodyPublisher body, String... headers) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                        .timeout(PATIENCE)
                        .method(method, body);
        if (headers.length > 0) {
            request.headers(headers);
        }
        try {
            HttpResponse<byte[]> response =
                    CLIENT.send(request.build(), BodyHandlers.ofByteArray());
            return new Answer(response.statusCode(), response.headers(), response.body());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Asks for something that a well-behaved client would not send. */
    Answer raw(String method, String path) {
        String request =
                "%s %s HTTP/1.0\r\nHost: localhost\r\nAccept-Language: de\r\n\r\n"
                        .formatted(method, path);
        try (Socket socket = new Socket("localhost", port)) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return parse(socket.getInputStream().readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Answer parse(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int end = text.indexOf("\r\n\r\n");
        List<String> head = text.substring(0, end).lines().toList();
        Map<String, List<String>> headers = new TreeMap<>();
        for (String line : head.subList(1, head.size())) {
            int colon = line.indexOf(':');
            headers.put(line.substring(0, colon), List.of(line.substring(colon + 1).strip()));
        }
        return new Answer(
                Integer.parseInt(head.getFirst().split(" ", -1)[1]),
                HttpHeaders.of(headers, (name, value) -> true),
                Arrays.copyOfRange(bytes, end + 4, bytes.length));
    }
}
