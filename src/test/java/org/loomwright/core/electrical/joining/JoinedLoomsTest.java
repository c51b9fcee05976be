package org.loomwright.core.electrical.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.simulation.Wiring;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.core.routing.Allowances;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.StrictJson;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.TestCatalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/** The demonstration's main and engine looms plugged together. */
class JoinedLoomsTest {

    private static final Catalogue CATALOGUE = TestCatalogue.get();
    private static final Loom MAIN = demo("averley-saloon-main");
    private static final Loom ENGINE = demo("averley-saloon-engine");

    private static Loom demo(String name) {
        String path = "/demo-data/" + name + ".json";
        try (InputStream stream = JoinedLoomsTest.class.getResourceAsStream(path)) {
            return StrictJson.parse(Objects.requireNonNull(stream, path).readAllBytes())
                    .then(LoomReader::read)
                    .then(document -> LoomChecker.check(document, CATALOGUE))
                    .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JoinedLooms joined() {
        return JoinedLooms.of(MAIN, ENGINE, CATALOGUE, Allowances.USUAL)
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    private static Readings run(Wiring wiring, Scenario scenario) {
        return new Simulation(
                        wiring,
                        TestCatalogue.electrical(),
                        ElectricalFiles.behaviours(),
                        ElectricalSettings.USUAL,
                        new SparseCholesky())
                .run(scenario)
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    private static Scenario winterNight(Engine engine) {
        return Scenario.of("winter night", engine, Temperature.ofCelsius(20))
                .with("IGN-SWITCH", "IGN")
                .with("LIGHT-SWITCH", "SIDE", "HEAD")
                .with("DIP-SWITCH", "DIP")
                .with("PANEL-SWITCH", "OUT")
                .with("WIPER-SWITCH", "MOTOR")
                .with("HEATER-SWITCH", "MOTOR");
    }

    private static ElementReading only(Readings readings, String device, Element element) {
        return readings.ofDevice(device).stream()
                .filter(reading -> reading.element() == element)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void togetherTheLoomsCarryInTheMainLoomWhatItCarriesAlone() {
        for (Engine engine : Engine.values()) {
            Readings alone = run(Wiring.of(MAIN, CATALOGUE, Allowances.USUAL), winterNight(engine));
            Readings together =
                    run(joined().wiring(), winterNight(engine).with("CHOKE-SWITCH", "SWITCH"));
            for (Wire wire : MAIN.wires().values()) {
                Current here = alone.getWire(wire.id()).current();
                Current there = together.getWire(JoinedLooms.nameOf(MAIN, wire.id())).current();
                // The engine loom's wires lie before coil and choke, which draw 4.5 A: 2 % of that.
                double allowed = 0.02 * 4.5;
                assertThat(there.toDoubleAmperes())
                        .as("%s, engine %s", wire.id(), engine)
                        .isCloseTo(here.toDoubleAmperes(), within(allowed));
            }
        }
    }

    @Test
    void theIgnitionCircuitClosesThroughTheDistributor() {
        Scenario on =
                Scenario.of("ignition on", Engine.OFF, Temperature.ofCelsius(20))
                        .with("IGN-SWITCH", "IGN");
        Readings readings = run(joined().wiring(), on);
        Current coil = only(readings, "COIL", Element.LOAD).current();

        assertThat(coil.toDoubleAmperes()).isCloseTo(3.5, within(0.15));
        assertThat(only(readings, "DISTRIBUTOR", Element.LINK).current()).isEqualTo(coil);
        assertThat(readings.getWire(JoinedLooms.nameOf(ENGINE, "W006")).current()).isEqualTo(coil);
    }

    @Test
    void aWireOfEachLoomToTheSamePlacesFollowEachOther() {
        Readings readings = run(joined().wiring(), winterNight(Engine.AT_SPEED));
        long main = readings.getWire(JoinedLooms.nameOf(MAIN, "W005")).current().milliamperes();
        long engine = readings.getWire(JoinedLooms.nameOf(ENGINE, "W001")).current().milliamperes();
        assertThat(main).isEqualTo(engine).isEqualTo(-23_500);
        assertThat(only(readings, "DYNAMO", Element.GENERATOR).current())
                .isEqualTo(Current.ofMilliamperes(22_000));
    }

    @Test
    void theStarterTurnsWhenItIsPushed() {
        Scenario push =
                Scenario.of("start", Engine.OFF, Temperature.ofCelsius(20))
                        .with("IGN-SWITCH", "IGN")
                        .with("STARTER-PUSH", "OUT");
        Readings readings = run(joined().wiring(), push);
        assertThat(readings.pulledIn()).contains("SOLENOID");
        assertThat(only(readings, "STARTER", Element.LOAD).current().toDoubleAmperes())
                .isBetween(110.0, 150.0);
    }

    @Test
    void aDeviceThatBothDescribeIsOneWithAllItsPoints() {
        assertThat(joined().wiring().devices().get("SOLENOID"))
                .isNotNull()
                .satisfies(
                        solenoid -> {
                            assertThat(solenoid.points())
                                    .extracting(Point::name)
                                    .containsExactlyInAnyOrder("BATT", "COIL", "MOTOR");
                            assertThat(solenoid.load()).isEqualTo(Current.ofMilliamperes(12_000));
                        });
        assertThat(joined().wiring().conductors())
                .hasSize(MAIN.wires().size() + ENGINE.wires().size());
    }

    @Test
    void whatTheLoomsSayDifferentlyIsFound() {
        assertThat(joined().findings())
                .filteredOn(finding -> finding.subject().id().equals("COIL"))
                .extracting(Finding::code, Finding::text)
                .containsExactly(
                        tuple(
                                "electrical.looms-disagree",
                                "Of COIL '%s' says load 4.5 A, '%s' 3.5 A; 3.5 A counts."
                                        .formatted(MAIN.name(), ENGINE.name())));
    }

    @Test
    void theOrderOfTheLoomsDoesNotMatter() {
        JoinedLooms turned =
                JoinedLooms.of(ENGINE, MAIN, CATALOGUE, Allowances.USUAL)
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        Readings one = run(joined().wiring(), winterNight(Engine.AT_SPEED));
        Readings other = run(turned.wiring(), winterNight(Engine.AT_SPEED));
        for (Readings.WireReading wire : one.wires()) {
            assertThat(other.getWire(wire.wire())).isEqualTo(wire);
        }
    }

    @Test
    void loomsOfDifferentVehiclesDoNotJoin() {
        Loom other =
                changed(
                        document ->
                                with(
                                        document,
                                        MAIN.name(),
                                        new VehicleSheet(
                                                document.vehicle().name(),
                                                document.vehicle().year(),
                                                document.vehicle().hand(),
                                                EarthPolarity.NEGATIVE,
                                                Voltage.ofMillivolts(6_000),
                                                List.of())));
        Outcome<JoinedLooms> outcome = JoinedLooms.of(MAIN, other, CATALOGUE, Allowances.USUAL);
        assertThat(((Outcome.Rejected<JoinedLooms>) outcome).reasons())
                .hasSize(3)
                .extracting(Finding::code)
                .containsOnly("electrical.looms-do-not-join");
    }

    @Test
    void ofTwoKindsTheOwnersCounts() {
        Loom odd =
                changed(
                        document -> {
                            List<Device> devices = new ArrayList<>(document.devices());
                            devices.replaceAll(
                                    device ->
                                            device.id().equals("OIL-SWITCH")
                                                    ? new Device(
                                                            "OIL-SWITCH",
                                                            "oil gauge unit",
                                                            DeviceKind.GAUGE,
                                                            null,
                                                            device.points())
                                                    : device);
                            return new LoomDocument(
                                    document.name(),
                                    document.vehicle(),
                                    document.datum(),
                                    document.nodes(),
                                    document.segments(),
                                    devices,
                                    document.wires(),
                                    document.checks());
                        });
        JoinedLooms joined =
                JoinedLooms.of(MAIN, odd, CATALOGUE, Allowances.USUAL)
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        assertThat(joined.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.contains("OIL-SWITCH") && text.endsWith("gauge counts."));
    }

    private static LoomDocument with(LoomDocument document, String name, VehicleSheet vehicle) {
        return new LoomDocument(
                name,
                vehicle,
                document.datum(),
                document.nodes(),
                document.segments(),
                document.devices(),
                document.wires(),
                document.checks());
    }

    private static Loom changed(UnaryOperator<LoomDocument> change) {
        return LoomChecker.check(change.apply(ENGINE.document()), CATALOGUE)
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }
}
