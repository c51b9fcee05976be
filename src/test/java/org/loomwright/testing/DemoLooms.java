package org.loomwright.testing;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.StrictJson;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The looms of the demonstration, proven. */
public final class DemoLooms {

    private DemoLooms() {}

    /** @return the main loom */
    public static Loom main() {
        return loom("averley-saloon-main");
    }

    /** @return the engine loom */
    public static Loom engine() {
        return loom("averley-saloon-engine");
    }

    /** @return what the customer wants added to the main loom */
    public static List<Amendment> additions() {
        JsonNode amendments = json("averley-saloon-additions").required("amendments");
        return AmendmentReader.read(amendments, "/amendments").orElseThrow(DemoLooms::refusal);
    }

    /** @return the main loom with the additions */
    public static AmendedLoom amended() {
        return Amendments.apply(main(), additions(), TestCatalogue.get())
                .orElseThrow(DemoLooms::refusal);
    }

    private static Loom loom(String file) {
        return LoomReader.read(json(file))
                .then(document -> LoomChecker.check(document, TestCatalogue.get()))
                .orElseThrow(DemoLooms::refusal);
    }

    private static JsonNode json(String file) {
        try (InputStream stream =
                DemoLooms.class.getResourceAsStream("/demo-data/" + file + ".json")) {
            if (stream == null) {
                throw new IllegalStateException(file + " is missing");
            }
            return StrictJson.parse(stream.readAllBytes()).orElseThrow(DemoLooms::refusal);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static IllegalStateException refusal(List<Finding> reasons) {
        return new IllegalStateException("refused: " + reasons);
    }
}
