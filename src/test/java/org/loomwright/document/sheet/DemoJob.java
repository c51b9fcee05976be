package org.loomwright.document.sheet;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.exchange.AcceptedJson;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.StrictJson;
import org.loomwright.testing.TestCatalogue;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The demonstration: the main loom of the Averley Twelve with its owner's additions. */
final class DemoJob {

    private DemoJob() {}

    static JobSheet sheet() {
        Loom stock =
                LoomReader.read(json("averley-saloon-main.json"))
                        .then(document -> LoomChecker.check(document, TestCatalogue.get()))
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        List<Amendment> amendments =
                AmendmentReader.read(
                                json("averley-saloon-additions.json").required("amendments"),
                                "/amendments")
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        AmendedLoom amended =
                Amendments.apply(stock, amendments, TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        return TestJobs.accepting(
                TestJobs.job(stock, amended, amended.recordedSegments(stock), amendments),
                accepted());
    }

    /** What the owner accepts. */
    static List<AcceptedFinding> accepted() {
        return AcceptedJson.read(
                        json("averley-saloon-additions.json").required("accepted"), "/accepted")
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    /** The same with its drawings. */
    static JobSheet drawn() {
        JobSheet sheet = sheet();
        return TestJobs.withPictures(
                sheet,
                SheetPictures.of(
                        sheet.change(), sheet.catalogue(), "revision 3, " + TestJobs.HASH));
    }

    private static JsonNode json(String file) {
        try (InputStream stream = DemoJob.class.getResourceAsStream("/demo-data/" + file)) {
            if (stream == null) {
                throw new IllegalStateException("no " + file);
            }
            return StrictJson.parse(stream.readAllBytes())
                    .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
