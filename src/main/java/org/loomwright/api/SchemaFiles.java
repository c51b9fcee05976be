package org.loomwright.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * The JSON Schemas under {@code shared} as components of the API's description. Each definition of a file becomes a component of
 * its own, named after the file's prefix, and every reference is turned to it.
 */
final class SchemaFiles {

    private static final String COMPONENT = "#/components/schemas/";
    private static final String LOOM = "Loom.";
    private static final String AMENDMENT = "Amendment.";

    private final Map<String, Schema<?>> schemas = new TreeMap<>();

    private SchemaFiles() {}

    static Map<String, Schema<?>> load() {
        SchemaFiles files = new SchemaFiles();
        ObjectNode loom = files.read("loom.schema.json", LOOM);
        files.add("Loom", loom);
        files.read("amendments.schema.json", AMENDMENT);
        files.rename(AMENDMENT + "amendments", "Amendments");
        files.read("api-bodies.schema.json", "");
        files.read("electrics.schema.json", "");
        return files.schemas;
    }

    /** Adds the definitions of a file and returns the rest of it. */
    private ObjectNode read(String file, String prefix) {
        String text =
                text("/shared/" + file)
                        .replace("\"#/$defs/", "\"" + COMPONENT + prefix)
                        .replace("\"urn:loomwright:schema:loom:1\"", "\"" + COMPONENT + "Loom\"")
                        .replace("\"urn:loomwright:schema:loom:1#/$defs/", "\"" + COMPONENT + LOOM)
                        .replace(
                                "\"urn:loomwright:schema:amendments:1#/$defs/amendments\"",
                                "\"" + COMPONENT + "Amendments\"")
                        .replace("\"urn:loomwright:schema:api-bodies:1#/$defs/", "\"" + COMPONENT)
                        .replace("\"urn:loomwright:schema:electrics:1#/$defs/", "\"" + COMPONENT);
        try {
            ObjectNode root = (ObjectNode) Json31.mapper().readTree(text);
            root.remove("$schema");
            root.remove("$id");
            JsonNode definitions = root.remove("$defs");
            definitions
                    .properties()
                    .forEach(entry -> add(prefix + entry.getKey(), entry.getValue()));
            return root;
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("shared/" + file + " is not JSON", e);
        }
    }

    private void add(String name, JsonNode schema) {
        schemas.put(name, Json31.mapper().convertValue(schema, JsonSchema.class));
    }

    private void rename(String from, String to) {
        Schema<?> schema = schemas.remove(from);
        if (schema == null) {
            throw new IllegalStateException("there is no schema " + from);
        }
        schemas.put(to, schema);
    }

    private static String text(String path) {
        try (InputStream stream = SchemaFiles.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException(path + " is missing");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
