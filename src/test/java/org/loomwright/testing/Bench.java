package org.loomwright.testing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.simulation.ShortedNet;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.core.routing.Allowances;
import org.loomwright.core.routing.TakeUp;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.solver.SparseCholesky;

import java.util.Arrays;
import java.util.List;

/** A loom on the bench with a battery on it: devices in a line, and its simulation. */
public final class Bench {

    /** As warm as a room. */
    public static final Temperature TWENTY = Temperature.ofCelsius(20);

    /** 12 V behind 10 mΩ; contacts and earths without resistance, wires as long as the centre line: easy to do by hand. */
    public static final ElectricalSettings BY_HAND = byHand();

    private static final Length TAIL = Length.ofMillimetres(100);
    private static final Behaviours BEHAVIOURS = ElectricalFiles.behaviours();

    private Bench() {}

    private static ElectricalSettings byHand() {
        ElectricalSettings usual = ElectricalSettings.USUAL;
        return new ElectricalSettings(
                Voltage.ofMillivolts(12_000),
                Resistance.ofNanoohms(10_000_000),
                usual.regulated(),
                usual.generatorResistance(),
                usual.dynamo(),
                usual.alternator(),
                usual.generators(),
                Resistance.ZERO,
                Resistance.ZERO,
                usual.relayCoil(),
                usual.pullIn(),
                usual.dropOut(),
                usual.sense(),
                usual.flasherDuty(),
                usual.dynamoField(),
                usual.alternatorField(),
                usual.leastExciting(),
                new Allowances(new TakeUp.Given(Ratio.ZERO), 0, usual.allowances().step()));
    }

    /** @return what devices do */
    public static Behaviours behaviours() {
        return BEHAVIOURS;
    }

    /** @return that many milliamperes */
    public static Current mA(long milliamperes) {
        return Current.ofMilliamperes(milliamperes);
    }

    /** @return a device with all its points at N1, 100 mm of tail each */
    public static Device device(
            String id, DeviceKind kind, @Nullable Current load, String... points) {
        return at("N1", id, kind, load, points);
    }

    /** @return a device with all its points at a node, 100 mm of tail each */
    public static Device at(
            String node, String id, DeviceKind kind, @Nullable Current load, String... points) {
        List<Point> there = Arrays.stream(points).map(name -> new Point(name, node, TAIL)).toList();
        return new Device(id, kind.words() + " " + id, kind, load, there);
    }

    /** @return the device with other particulars */
    public static Device with(Device device, Particulars particulars) {
        return new Device(
                device.id(),
                device.name(),
                device.kind(),
                device.load(),
                particulars,
                device.points());
    }

    /** @return the device with another name */
    public static Device named(Device device, String name) {
        return new Device(
                device.id(),
                name,
                device.kind(),
                device.load(),
                device.particulars(),
                device.points());
    }

    /** @return the device, serving that */
    public static Device serving(Device device, String service) {
        return with(device, new Particulars(service, null, null, null, List.of()));
    }

    /** @return a wire of that size between two places such as {@code D1/1} */
    public static Wire wire(String id, String size, String a, String b) {
        Wire plain = LoomSketch.plainWire(id, "N", a, b);
        return new Wire(
                id, plain.circuit(), plain.colour(), size, plain.a(), plain.b(), plain.condition());
    }

    /** @return the loom of the sketch in a vehicle with that earth and that system */
    public static Loom loom(LoomSketch sketch, EarthPolarity earth, long systemMillivolts) {
        LoomDocument drawn = sketch.document();
        VehicleSheet old = drawn.vehicle();
        VehicleSheet vehicle =
                new VehicleSheet(
                        old.name(),
                        old.year(),
                        old.hand(),
                        earth,
                        Voltage.ofMillivolts(systemMillivolts),
                        old.notStandard());
        return proven(
                new LoomDocument(
                        drawn.name(),
                        vehicle,
                        drawn.datum(),
                        drawn.nodes(),
                        drawn.segments(),
                        drawn.devices(),
                        drawn.wires(),
                        drawn.checks()));
    }

    /** @return the document, proven */
    public static Loom proven(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get()).orElseThrow(Bench::refusal);
    }

    /** @return its simulation with the usual settings */
    public static Simulation simulation(Loom loom) {
        return simulation(loom, ElectricalSettings.USUAL);
    }

    /** @return its simulation */
    public static Simulation simulation(Loom loom, ElectricalSettings settings) {
        return new Simulation(
                loom,
                TestCatalogue.get(),
                TestCatalogue.electrical(),
                BEHAVIOURS,
                settings,
                new SparseCholesky());
    }

    /** @return the readings in a scenario that is possible */
    public static Readings run(Simulation simulation, Scenario scenario) {
        return simulation.run(scenario).orElseThrow(Bench::refusal);
    }

    /** @return the net in a scenario that is possible */
    public static ShortedNet shorted(Simulation simulation, Scenario scenario) {
        return simulation.shorted(scenario).orElseThrow(Bench::refusal);
    }

    /** @return a scenario with the engine standing and every switch off */
    public static Scenario parked() {
        return Scenario.of("parked", Engine.OFF, TWENTY);
    }

    /** @return ignition, side lamps, dipped beam, panel lamps, wiper and heater of the demonstration saloon */
    public static Scenario winterNight(Engine engine) {
        return Scenario.of("winter night", engine, TWENTY)
                .with("IGN-SWITCH", "IGN")
                .with("LIGHT-SWITCH", "SIDE", "HEAD")
                .with("DIP-SWITCH", "DIP")
                .with("PANEL-SWITCH", "OUT")
                .with("WIPER-SWITCH", "MOTOR")
                .with("HEATER-SWITCH", "MOTOR");
    }

    private static IllegalStateException refusal(List<Finding> reasons) {
        return new IllegalStateException(reasons.toString());
    }
}
