package org.loomwright.core.electrical.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.electrical.WireResistance;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.routing.Allowances;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** 6, 12 and 24 V, either terminal on the body, and connections without any resistance. */
class SupplyTest {

    private static final Scenario ON =
            Scenario.of("on", Engine.OFF, Simulated.TWENTY).with("K1", "OUT");

    private static Device device(String id, DeviceKind kind, long milliamperes, String... points) {
        List<Point> at =
                Arrays.stream(points)
                        .map(name -> new Point(name, "N1", Length.ofMillimetres(100)))
                        .toList();
        Current load = milliamperes == 0 ? null : Current.ofMilliamperes(milliamperes);
        return new Device(id, id, kind, load, at);
    }

    /** Battery, switch and a lamp of 24 W on its own earth screw. */
    private static Loom lampOf24Watts(EarthPolarity earth, long volts) {
        return new LoomSketch("N1")
                .supply(earth, volts)
                .segment("S1", "N1", "N2", 1_000)
                .device(device("BATTERY", DeviceKind.BATTERY, 0, "LIVE"))
                .device(device("K1", DeviceKind.SWITCH, 0, "FEED", "OUT"))
                .device(device("LAMP", DeviceKind.LAMP, 24_000 / volts, "FEED", "EARTH"))
                .device(device("E1", DeviceKind.EARTH_POINT, 0, "STUD"))
                .wire("W1", "N", "BATTERY/LIVE", "K1/FEED")
                .wire("W2", "G", "K1/OUT", "LAMP/FEED")
                .wire("W3", "B", "LAMP/EARTH", "E1/STUD")
                .loom();
    }

    private static double ohmsOfWires(Loom loom) {
        WireResistance resistance = new WireResistance(TestCatalogue.electrical());
        return Wiring.of(loom, TestCatalogue.get(), Allowances.USUAL).conductors().stream()
                .map(
                        wire ->
                                resistance
                                        .perMetre(wire.size(), Simulated.TWENTY)
                                        .times(wire.length()))
                .mapToDouble(Resistance::toDoubleOhms)
                .sum();
    }

    private static ElementReading lamp(Readings readings) {
        return readings.ofDevice("LAMP").getFirst();
    }

    @ParameterizedTest
    @CsvSource({"POSITIVE, 6", "NEGATIVE, 6", "POSITIVE, 12", "NEGATIVE, 12", "NEGATIVE, 24"})
    void aLampTakesWhatOhmsLawSays(EarthPolarity earth, long volts) {
        Loom loom = lampOf24Watts(earth, volts);
        Readings readings = Simulated.run(loom, ON);

        double lampOhms = volts * volts / 24.0;
        // 10 mohm in the battery, 3 in the contact, 2 in the earth screw.
        double expected =
                12.6 * volts / 12 / (lampOhms + ohmsOfWires(loom) + 0.010 + 0.003 + 0.002);
        assertThat(lamp(readings).current().toDoubleAmperes()).isCloseTo(expected, within(0.0006));
        assertThat(readings.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"6", "12", "24"})
    void eitherPolarityGivesTheSameReadings(long volts) {
        Readings one = Simulated.run(lampOf24Watts(EarthPolarity.POSITIVE, volts), ON);
        Readings other = Simulated.run(lampOf24Watts(EarthPolarity.NEGATIVE, volts), ON);
        assertThat(one).isEqualTo(other);
    }

    /** The same watts at half the voltage: twice the current, and four times the share of the voltage lost. */
    @Test
    void sixVoltsLoseFourTimesTheShare() {
        double at6 = lostShare(6);
        double at12 = lostShare(12);
        assertThat(at6 / at12).isCloseTo(4, within(0.15));
    }

    private static double lostShare(long volts) {
        Readings readings = Simulated.run(lampOf24Watts(EarthPolarity.POSITIVE, volts), ON);
        double emf = 12.6 * volts / 12;
        return (emf - lamp(readings).across().toDoubleVolts()) / emf;
    }

    @ParameterizedTest
    @CsvSource({"6, 400, true", "6, 330, false", "12, 200, true", "12, 160, false", "24, 84, true"})
    void moreThanTwoKilowattsAreNotBelieved(long volts, long amperes, boolean found) {
        Loom loom =
                new LoomSketch("N1")
                        .supply(EarthPolarity.POSITIVE, volts)
                        .segment("S1", "N1", "N2", 1_000)
                        .device(device("BATTERY", DeviceKind.BATTERY, 0, "LIVE"))
                        .device(device("FIRE", DeviceKind.HEATER, amperes * 1_000, "FEED"))
                        .wire("W1", "N", "BATTERY/LIVE", "FIRE/FEED")
                        .loom();
        List<String> codes =
                Simulated.run(loom, Scenario.of("on", Engine.OFF, Simulated.TWENTY))
                        .findings()
                        .stream()
                        .map(Finding::code)
                        .toList();
        assertThat(codes.contains("electrical.load-not-sane")).isEqualTo(found);
    }

    @Test
    void loopsOfWiresWithoutLengthAreSolvedAndTold() {
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(device("BATTERY", DeviceKind.BATTERY, 0, "LIVE"))
                        .device(touching("J1"))
                        .device(touching("J2"))
                        .device(touching("J3"))
                        .device(device("LAMP", DeviceKind.LAMP, 2_000, "FEED"))
                        .wire("W1", "N", "BATTERY/LIVE", "J1/JOINT")
                        .wire("W2", "N", "J1/JOINT", "J2/JOINT")
                        .wire("W3", "N", "J2/JOINT", "J3/JOINT")
                        .wire("W4", "N", "J3/JOINT", "J1/JOINT")
                        .wire("W5", "G", "J3/JOINT", "LAMP/FEED")
                        .loom();
        Readings readings = Simulated.run(loom, Scenario.of("on", Engine.OFF, Simulated.TWENTY));

        Current lamp = lamp(readings).current();
        assertThat(lamp.toDoubleAmperes()).isCloseTo(2.1, within(0.05));
        assertThat(readings.getWire("W1").current()).isEqualTo(lamp);
        long throughLoop =
                readings.getWire("W3").current().milliamperes()
                        - readings.getWire("W4").current().milliamperes();
        assertThat(throughLoop).isEqualTo(lamp.milliamperes());
        assertThat(readings.findings())
                .singleElement()
                .satisfies(
                        finding ->
                                assertThat(finding.code())
                                        .isEqualTo("electrical.current-undetermined"));
    }

    /** A joint at the end of no tail, so that wires between two such have no length. */
    private static Device touching(String id) {
        return new Device(
                id, id, DeviceKind.JOINT, null, List.of(new Point("JOINT", "N1", Length.ZERO)));
    }

    @Test
    void contactsWithoutResistanceShareByTheirWires() {
        ElectricalSettings ideal = ElectricalSettings.of(withoutContacts(), Allowances.USUAL);
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(device("BATTERY", DeviceKind.BATTERY, 0, "LIVE"))
                        .device(device("K1", DeviceKind.SWITCH, 0, "FEED", "OUT", "ALSO"))
                        .device(device("LAMP", DeviceKind.LAMP, 2_000, "FEED"))
                        .wire("W1", "N", "BATTERY/LIVE", "K1/FEED")
                        .wire("W2", "G", "K1/OUT", "LAMP/FEED")
                        .wire("W3", "G", "K1/ALSO", "LAMP/FEED")
                        .loom();
        Readings readings =
                Simulated.run(
                        Simulated.simulation(loom, ideal),
                        Scenario.of("on", Engine.OFF, Simulated.TWENTY).with("K1", "OUT", "ALSO"));
        // Equal wires share equally.
        assertThat(readings.getWire("W2").current()).isEqualTo(readings.getWire("W3").current());
        assertThat(readings.findings()).isEmpty();
    }

    private static List<SettingRow> withoutContacts() {
        Provenance none = new Provenance(Status.COMPUTED, "made up for a test");
        return ElectricalFiles.settingRows().stream()
                .map(
                        row ->
                                row.name().equals("contact-resistance")
                                        ? new SettingRow(
                                                row.name(),
                                                BigDecimal.ZERO,
                                                row.unit(),
                                                row.meaning(),
                                                none)
                                        : row)
                .toList();
    }
}
