package org.loomwright.document.drawing;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.StrictJson;
import org.loomwright.testing.TestCatalogue;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The demonstration looms, analysed. */
final class DemoAnalyses {

    private static final Catalogue CATALOGUE = TestCatalogue.get();
    private static final BundlePacker PACKER = new BundlePacker(1000);

    private DemoAnalyses() {}

    static LoomAnalysis stock(String name) {
        return analysis(loom(name));
    }

    static LoomAnalysis analysis(Loom loom) {
        return LoomAnalysis.of(loom, AnalysisSettings.USUAL, CATALOGUE, PACKER);
    }

    static ChangeAnalysis additions() {
        Loom stock = loom("averley-saloon-main");
        AmendedLoom amended =
                AmendmentReader.read(
                                json("averley-saloon-additions").required("amendments"),
                                "/amendments")
                        .then(list -> Amendments.apply(stock, list, CATALOGUE))
                        .orElseThrow(DemoAnalyses::refusal);
        Map<String, String> recorded = new HashMap<>();
        for (String id : amended.loom().segments().keySet()) {
            String origin = amended.piece(id).recorded().id();
            if (stock.segments().containsKey(origin)) {
                recorded.put(id, origin);
            }
        }
        return ChangeAnalysis.of(analysis(stock), analysis(amended.loom()), recorded, CATALOGUE);
    }

    private static Loom loom(String name) {
        return LoomReader.read(json(name))
                .then(document -> LoomChecker.check(document, CATALOGUE))
                .orElseThrow(DemoAnalyses::refusal);
    }

    private static JsonNode json(String name) {
        String path = "/demo-data/" + name + ".json";
        try (InputStream stream = DemoAnalyses.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException(path + " is missing");
            }
            return StrictJson.parse(stream.readAllBytes()).orElseThrow(DemoAnalyses::refusal);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RuntimeException refusal(List<Finding> reasons) {
        return new IllegalStateException(reasons.toString());
    }
}
