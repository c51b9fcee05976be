package org.loomwright.core.electrical.simulation;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.StrictJson;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.TestCatalogue;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Looms ready to be simulated, with the usual tables and settings. */
final class Simulated {

    static final Temperature TWENTY = Temperature.ofCelsius(20);

    private static final Catalogue CATALOGUE = TestCatalogue.get();

    private Simulated() {}

    static Simulation simulation(Loom loom) {
        return simulation(loom, ElectricalSettings.USUAL);
    }

    static Simulation simulation(Loom loom, ElectricalSettings settings) {
        return new Simulation(
                loom,
                CATALOGUE,
                TestCatalogue.electrical(),
                ElectricalFiles.behaviours(),
                settings,
                new SparseCholesky());
    }

    static Readings run(Loom loom, Scenario scenario) {
        return run(simulation(loom), scenario);
    }

    static Readings run(Simulation simulation, Scenario scenario) {
        return simulation.run(scenario).orElseThrow(Simulated::refusal);
    }

    /** Ignition, side lamps, dipped beam, panel lamps, wiper and heater of the demonstration saloon. */
    static Scenario winterNight(Engine engine) {
        return Scenario.of("winter night", engine, TWENTY)
                .with("IGN-SWITCH", "IGN")
                .with("LIGHT-SWITCH", "SIDE", "HEAD")
                .with("DIP-SWITCH", "DIP")
                .with("PANEL-SWITCH", "OUT")
                .with("WIPER-SWITCH", "MOTOR")
                .with("HEATER-SWITCH", "MOTOR");
    }

    static Loom demoMain() {
        return loom("averley-saloon-main");
    }

    static Loom demoEngine() {
        return loom("averley-saloon-engine");
    }

    static Loom demoAmended() {
        JsonNode amendments = json("averley-saloon-additions").required("amendments");
        return AmendmentReader.read(amendments, "/amendments")
                .then(list -> Amendments.apply(demoMain(), list, CATALOGUE))
                .map(AmendedLoom::loom)
                .orElseThrow(Simulated::refusal);
    }

    private static Loom loom(String name) {
        return LoomReader.read(json(name))
                .then(document -> LoomChecker.check(document, CATALOGUE))
                .orElseThrow(Simulated::refusal);
    }

    private static JsonNode json(String name) {
        String path = "/demo-data/" + name + ".json";
        try (InputStream stream = Simulated.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException(path + " is missing");
            }
            return StrictJson.parse(stream.readAllBytes()).orElseThrow(Simulated::refusal);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static IllegalStateException refusal(List<Finding> reasons) {
        return new IllegalStateException(reasons.toString());
    }
}
