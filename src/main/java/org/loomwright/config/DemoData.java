package org.loomwright.config;

import org.loomwright.app.Looms;
import org.loomwright.app.Request;
import org.loomwright.app.Revisions;
import org.loomwright.app.Specifications;
import org.loomwright.app.StoredLoom;
import org.loomwright.app.StoredRevision;
import org.loomwright.app.StoredSpecification;
import org.loomwright.app.WorkOrderStore;
import org.loomwright.app.WorkOrders;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.exchange.AcceptedJson;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.StrictJson;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.stereotype.Component;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

/**
 * Loads the invented demonstration into an empty database, through the same use cases as everybody: two looms, a specification
 * with the customer's additions, a frozen revision and a work order on it.
 */
@Component
@ConditionalOnBooleanProperty(name = "loomwright.demo", matchIfMissing = true)
class DemoData implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(DemoData.class);
    private static final String FOLDER = "/demo-data/";
    private static final String RESTORER = "demo restorer";
    private static final int WEEKS_PROMISED = 10;

    private final Looms looms;
    private final Specifications specifications;
    private final Revisions revisions;
    private final WorkOrders workOrders;
    private final Clock clock;

    DemoData(
            Looms looms,
            Specifications specifications,
            Revisions revisions,
            WorkOrders workOrders,
            Clock clock) {
        this.looms = looms;
        this.specifications = specifications;
        this.revisions = revisions;
        this.workOrders = workOrders;
        this.clock = clock;
    }

    @Override
    public void run(ApplicationArguments args) throws IOException {
        if (looms.list(null, 1).items().isEmpty()) {
            load();
            LOG.info("The database was empty: loaded the demonstration (all of it invented)");
        }
    }

    private void load() throws IOException {
        loom("averley-saloon-engine.json");
        StoredLoom main = loom("averley-saloon-main.json");
        JsonNode additions = json("averley-saloon-additions.json");
        List<Amendment> amendments =
                orThrow(AmendmentReader.read(additions.get("amendments"), "/amendments"));
        StoredSpecification specification =
                orThrow(
                        specifications.begin(
                                main.id(),
                                new Specifications.Wishes(
                                        additions.get("title").stringValue(),
                                        amendments,
                                        AnalysisSettings.USUAL,
                                        orThrow(
                                                AcceptedJson.read(
                                                        additions.get("accepted"), "/accepted"))),
                                Request.unmarked()));
        StoredRevision revision =
                revisions.freeze(specification.id(), specification.version(), RESTORER);
        LocalDate due =
                LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).plusWeeks(WEEKS_PROMISED);
        orThrow(
                workOrders.open(
                        new WorkOrderStore.Terms(
                                revision.hash(),
                                "A. Demo Restorer (invented)",
                                "Tenter Lane Loom Works (invented)",
                                due,
                                "Keep the old covering as a sample for the tracer."),
                        RESTORER,
                        Request.unmarked()));
    }

    private StoredLoom loom(String file) throws IOException {
        return orThrow(
                LoomReader.read(json(file))
                        .then(document -> looms.record(document, Request.unmarked())));
    }

    private static JsonNode json(String file) throws IOException {
        try (InputStream stream = DemoData.class.getResourceAsStream(FOLDER + file)) {
            if (stream == null) {
                throw new IllegalStateException(FOLDER + file + " is missing");
            }
            return orThrow(StrictJson.parse(stream.readAllBytes()));
        }
    }

    private static <T> T orThrow(Outcome<T> outcome) {
        return outcome.orElseThrow(DemoData::wrong);
    }

    private static IllegalStateException wrong(List<Finding> reasons) {
        return new IllegalStateException("the demonstration is wrong: " + reasons);
    }
}
