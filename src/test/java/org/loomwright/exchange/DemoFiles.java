package org.loomwright.exchange;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.testing.TestCatalogue;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/** The demonstration data and the schemas, as they stand on the class path. */
public final class DemoFiles {

    /** Where it stands on the class path. */
    public static final String MAIN = "/demo-data/averley-saloon-main.json";

    /** Where it stands on the class path. */
    public static final String ENGINE = "/demo-data/averley-saloon-engine.json";

    /** Where it stands on the class path. */
    public static final String ADDITIONS = "/demo-data/averley-saloon-additions.json";

    static final String LOOM_SCHEMA = "/shared/loom.schema.json";
    static final String AMENDMENTS_SCHEMA = "/shared/amendments.schema.json";

    private DemoFiles() {}

    /** @return the file as it stands */
    public static byte[] bytes(String resource) {
        try (InputStream stream =
                Objects.requireNonNull(DemoFiles.class.getResourceAsStream(resource), resource)) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @return the file, parsed */
    public static JsonNode json(String resource) {
        return StrictJson.parse(bytes(resource))
                .orElseThrow(reasons -> new IllegalStateException(resource + ": " + reasons));
    }

    static LoomDocument document(String resource) {
        return LoomReader.read(json(resource))
                .orElseThrow(reasons -> new IllegalStateException(resource + ": " + reasons));
    }

    static Loom loom(String resource) {
        return LoomChecker.check(document(resource), TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(resource + ": " + reasons));
    }

    static List<Amendment> additions() {
        return AmendmentReader.read(json(ADDITIONS).get("amendments"), "/amendments")
                .orElseThrow(reasons -> new IllegalStateException(ADDITIONS + ": " + reasons));
    }
}
