package org.loomwright.core.electrical.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.simulation.ShortedNet;
import org.loomwright.core.electrical.simulation.ShortedNet.Drawn;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.Bench;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Shorts against whole simulations of looms that have the short in them. */
class ShortCircuitsProperties {

    private static final String STRAP = "61/0.90";

    /** The same loom with a stout strap from the place to the body. */
    private static Loom strapped(Loom loom, String place) {
        LoomDocument old = loom.document();
        Point point = loom.getPoint(LoomSketch.end(place));
        List<Device> devices = new ArrayList<>(old.devices());
        devices.add(
                new Device(
                        "STRAP",
                        "strap",
                        DeviceKind.EARTH_POINT,
                        null,
                        List.of(new Point("STUD", point.node(), Length.ofMillimetres(10)))));
        List<Wire> wires = new ArrayList<>(old.wires());
        wires.add(Bench.wire("W-STRAP", STRAP, place, "STRAP/STUD"));
        return Bench.proven(
                new LoomDocument(
                        old.name(),
                        old.vehicle(),
                        old.datum(),
                        old.nodes(),
                        old.segments(),
                        devices,
                        wires,
                        old.checks()));
    }

    private static double strapOhms(Loom loom, String place) {
        double metres = loom.getPoint(LoomSketch.end(place)).tail().toDoubleMillimetres() / 1e3;
        return (metres + 0.01)
                * TestCatalogue.electrical().getResistance(STRAP).at20().toDoubleMilliohmsPerMetre()
                / 1e3;
    }

    private static void checkEveryPlace(Loom loom, Scenario scenario) {
        ShortedNet net = Bench.shorted(Bench.simulation(loom, Bench.BY_HAND), scenario);
        Set<String> places = new TreeSet<>();
        loom.wires().values().forEach(wire -> places.add(wire.a().place()));
        loom.wires().values().forEach(wire -> places.add(wire.b().place()));
        for (String place : places) {
            Drawn drawn = net.at(place);
            double amperes = drawn.current().toDoubleAmperes();
            double volts = drawn.open().toDoubleVolts();
            double expected =
                    Math.abs(amperes) < 0.1
                            ? amperes
                            : volts / (volts / amperes + strapOhms(loom, place));
            double simulated =
                    Bench.run(Bench.simulation(strapped(loom, place), Bench.BY_HAND), scenario)
                            .getWire("W-STRAP")
                            .current()
                            .toDoubleAmperes();
            // The open voltage is known to the millivolt only, which matters where there is little
            // of it.
            double tolerance =
                    0.02 + Math.abs(amperes) * (1e-4 + 1e-3 / Math.max(Math.abs(volts), 1e-3));
            assertThat(simulated).as(place).isCloseTo(expected, within(tolerance));
        }
    }

    @Test
    void everyShortOfTheDemonstrationIsWhatAWholeSimulationFinds() {
        checkEveryPlace(DemoLooms.main(), Bench.winterNight(Engine.OFF));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everyShortOfARandomLoomIsWhatAWholeSimulationFinds(long seed) {
        Loom random = RandomLooms.of(seed, RandomLooms.Size.CAR);
        LoomDocument old = random.document();
        List<Device> still = old.devices().stream().map(ShortCircuitsProperties::still).toList();
        List<Wire> wires =
                old.wires().stream()
                        .map(wire -> wire.withEnd(Side.A, still(random, wire.a())))
                        .map(wire -> wire.withEnd(Side.B, still(random, wire.b())))
                        .toList();
        checkEveryPlace(
                Bench.proven(
                        new LoomDocument(
                                old.name(),
                                old.vehicle(),
                                old.datum(),
                                old.nodes(),
                                old.segments(),
                                still,
                                wires,
                                old.checks())),
                Bench.parked());
    }

    /** What moves by itself would move differently with the short in place; in its stead stands a battery or a lamp. */
    private static DeviceKind stillKind(Device device) {
        return switch (device.kind()) {
            case RELAY, FLASHER, DYNAMO, ALTERNATOR -> DeviceKind.LAMP;
            case GAUGE, DISTRIBUTOR, CONNECTOR -> DeviceKind.BATTERY;
            default -> device.kind();
        };
    }

    private static List<String> stillPoints(Device device) {
        return switch (stillKind(device)) {
            case BATTERY -> List.of("LIVE", "EARTH", "X");
            case LAMP -> List.of("FEED", "EARTH", "X");
            default -> device.points().stream().map(Point::name).toList();
        };
    }

    private static Device still(Device device) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < device.points().size(); i++) {
            Point point = device.points().get(i);
            points.add(new Point(stillPoints(device).get(i), point.node(), point.tail()));
        }
        return new Device(device.id(), device.name(), stillKind(device), device.load(), points);
    }

    private static WireEnd still(Loom loom, WireEnd end) {
        Device device = loom.getDevice(end.device());
        int number = device.points().indexOf(loom.getPoint(end));
        return new WireEnd(end.device(), stillPoints(device).get(number), end.terminal());
    }

    @Test
    void aLongerWireDrawsLess() {
        double before = Double.MAX_VALUE;
        for (int metres = 1; metres <= 12; metres++) {
            Loom loom =
                    new LoomSketch("N1")
                            .segment("S1", "N1", "N2", metres * 1_000L)
                            .device(Bench.device("BATTERY", DeviceKind.BATTERY, null, "LIVE"))
                            .device(Bench.at("N2", "L", DeviceKind.LAMP, Bench.mA(500), "FEED"))
                            .wire(Bench.wire("W1", "14/0.30", "BATTERY/LIVE", "L/FEED"))
                            .loom();
            double now =
                    Bench.shorted(Bench.simulation(loom, ElectricalSettings.USUAL), Bench.parked())
                            .at("L/FEED")
                            .current()
                            .toDoubleAmperes();
            assertThat(now).isPositive().isLessThan(before);
            before = now;
        }
    }
}
