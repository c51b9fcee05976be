package org.loomwright.core.electrical.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.LoomSketch;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Looms in scenarios: what flows, what is found. */
class SimulationTest {

    private static Device device(
            String id, DeviceKind kind, @Nullable Current load, String... points) {
        List<Point> at =
                Arrays.stream(points)
                        .map(name -> new Point(name, "N1", Length.ofMillimetres(100)))
                        .toList();
        return new Device(id, kind.words() + " " + id, kind, load, at);
    }

    private static Current amperes(long amperes) {
        return Current.ofMilliamperes(amperes * 1_000);
    }

    private static LoomSketch battery() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 1_000)
                .device(device("BATTERY", DeviceKind.BATTERY, null, "LIVE"));
    }

    private static Scenario parked() {
        return Scenario.of("parked", Engine.OFF, Simulated.TWENTY);
    }

    private static ElementReading only(Readings readings, String device, Element element) {
        return readings.ofDevice(device).stream()
                .filter(reading -> reading.element() == element)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void onAWinterNightTheDynamoDoesNotQuiteKeepUp() {
        Readings readings =
                Simulated.run(Simulated.demoMain(), Simulated.winterNight(Engine.AT_SPEED));

        // Sum of the recorded loads at 12 V: coil and choke 4.5, dip 7, side 1, tail 1, plate 0.5,
        // panel 0.36, wiper 3, heater 3.5, pump 1.5,
        // gauges 0.4: 22.76 A. As resistors at 12.0 to 12.4 V they draw up to 3 % more.
        assertThat(readings.drawn().toDoubleAmperes() / 22.76).isBetween(1.0, 1.03);
        assertThat(only(readings, "DYNAMO", Element.GENERATOR).current()).isEqualTo(amperes(22));
        assertThat(only(readings, "BATTERY", Element.SOURCE).current().toDoubleAmperes())
                .isBetween(0.5, 1.5);
        assertThat(only(readings, "IGN-LAMP", Element.LOAD).across().toDoubleVolts())
                .isBetween(-1.0, 1.0);
        assertThat(readings.findings()).isEmpty();
    }

    @Test
    void atIdleTheBatteryGivesEverythingAndTheWarningLampIsLit() {
        Readings readings = Simulated.run(Simulated.demoMain(), Simulated.winterNight(Engine.IDLE));
        ElementReading battery = only(readings, "BATTERY", Element.SOURCE);

        assertThat(battery.current().toDoubleAmperes())
                .isCloseTo(readings.drawn().toDoubleAmperes(), within(0.01));
        assertThat(readings.getWire("W001").current()).isEqualTo(battery.current());
        assertThat(only(readings, "IGN-LAMP", Element.LOAD).across().toDoubleVolts())
                .isGreaterThan(11);
        assertThat(readings.of(Element.CUT_OUT)).isEmpty();
    }

    @Test
    void theDropToAHeadlampIsThatOfItsWires() {
        Readings readings = Simulated.run(Simulated.demoMain(), Simulated.winterNight(Engine.IDLE));
        Voltage feed = readings.getWire("W076").drop();
        Voltage earth = readings.getWire("W079").drop();
        ElementReading lamp =
                readings.ofDevice("HEADLAMP-NS").stream()
                        .filter(filament -> filament.from().equals("DIP"))
                        .findFirst()
                        .orElseThrow();

        assertThat(readings.getWire("W076").current()).isEqualTo(lamp.current());
        assertThat(feed.millivolts() + lamp.across().millivolts() + earth.millivolts())
                .isCloseTo(
                        voltageAt(readings, "JOINT-DIP/JOINT")
                                - voltageAt(readings, "EARTH-FRONT-NS/STUD"),
                        within(2L));
    }

    private static long voltageAt(Readings readings, String place) {
        return Objects.requireNonNull(readings.points().get(place), place).millivolts();
    }

    @Test
    void withEverythingOffNothingFlows() {
        Readings readings = Simulated.run(Simulated.demoMain(), parked());
        assertThat(readings.drawn()).isEqualTo(Current.ZERO);
        assertThat(readings.wires())
                .allSatisfy(wire -> assertThat(wire.current()).isEqualTo(Current.ZERO));
    }

    @Test
    void aRelayPullsInWhenItsCoilIsFed() {
        Loom amended = Simulated.demoAmended();
        Readings off = Simulated.run(amended, Simulated.winterNight(Engine.AT_SPEED));
        Readings on =
                Simulated.run(
                        amended, Simulated.winterNight(Engine.AT_SPEED).with("FOG-SWITCH", "OUT"));

        assertThat(off.pulledIn()).doesNotContain("FOG-RELAY");
        assertThat(on.pulledIn()).contains("FOG-RELAY");
        assertThat(only(off, "FOGLAMP-OS", Element.LOAD).current()).isEqualTo(Current.ZERO);
        assertThat(only(on, "FOGLAMP-OS", Element.LOAD).current().toDoubleAmperes())
                .isBetween(4.3, 4.7);
    }

    @Test
    void contactsWithoutResistanceAreSolvedToo() {
        ElectricalSettings usual = ElectricalSettings.USUAL;
        ElectricalSettings ideal =
                new ElectricalSettings(
                        usual.battery(),
                        usual.batteryResistance(),
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
                        usual.allowances());
        Simulation simulation = Simulated.simulation(Simulated.demoMain(), ideal);
        Readings readings = Simulated.run(simulation, Simulated.winterNight(Engine.IDLE));

        assertThat(only(readings, "AMMETER", Element.LINK).current())
                .isEqualTo(only(readings, "BATTERY", Element.SOURCE).current());
        assertThat(readings.findings()).isEmpty();
    }

    @Test
    void warmWiresLoseMore() {
        Loom loom = Simulated.demoMain();
        Scenario cold = Simulated.winterNight(Engine.IDLE);
        Scenario warm =
                new Scenario("summer", cold.closed(), cold.engine(), Temperature.ofCelsius(70));
        double ratio =
                ohms(Simulated.run(loom, warm), "W003") / ohms(Simulated.run(loom, cold), "W003");
        // 1 + 0.00393 x 50; the readings are whole millivolts of about 110.
        assertThat(ratio).isCloseTo(1.1965, within(0.02));
    }

    private static double ohms(Readings readings, String wire) {
        return readings.getWire(wire).drop().toDoubleVolts()
                / readings.getWire(wire).current().toDoubleAmperes();
    }

    @Test
    void aDeadShortIsAFindingThatNamesTheWay() {
        Loom loom =
                battery()
                        .device(device("K1", DeviceKind.SWITCH, null, "FEED", "OUT"))
                        .device(device("E1", DeviceKind.EARTH_POINT, null, "STUD"))
                        .wire("W1", "N", "BATTERY/LIVE", "K1/FEED")
                        .wire("W2", "B", "K1/OUT", "E1/STUD")
                        .loom();
        assertThat(Simulated.run(loom, parked()).findings()).isEmpty();

        Readings shorted = Simulated.run(loom, parked().with("K1", "OUT"));
        assertThat(shorted.findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("electrical.dead-short");
                            assertThat(finding.text())
                                    .contains(
                                            "BATTERY/LIVE - wire W1 - K1/FEED - K1/OUT - wire W2 -"
                                                    + " E1/STUD - body");
                        });
        assertThat(shorted.getWire("W1").current()).isGreaterThan(amperes(300));
    }

    @Test
    void aRelayThatCutsItselfOffNeverComesToRest() {
        Loom loom =
                battery()
                        .device(device("BUZZER", DeviceKind.RELAY, null, "30", "87a", "86"))
                        .wire("W1", "N", "BATTERY/LIVE", "BUZZER/30")
                        .wire("W2", "W", "BUZZER/87a", "BUZZER/86")
                        .loom();
        assertThat(Simulated.run(loom, parked()).findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("electrical.never-at-rest");
                            assertThat(finding.text()).contains("BUZZER");
                        });
    }

    @ParameterizedTest
    @CsvSource({"LIGHT-SWITCH, FULL", "LIGHT-SWITCH, FEED", "NO-SWITCH, OUT", "COIL, SW"})
    void anImpossibleSwitchPositionIsRefused(String device, String point) {
        Outcome<Readings> outcome =
                Simulated.simulation(Simulated.demoMain()).run(parked().with(device, point));
        assertThat(outcome).isInstanceOf(Outcome.Rejected.class);
        assertThat(((Outcome.Rejected<Readings>) outcome).reasons())
                .extracting(Finding::code)
                .containsExactly("electrical.switch-position-impossible");
    }

    @ParameterizedTest
    @CsvSource({"400, 20", "20, -61", "20, 21"})
    void temperaturesThatCannotBeAreRefused(long conductors, long ambient) {
        Scenario scenario =
                new Scenario(
                        "oven",
                        Map.of(),
                        Engine.OFF,
                        Temperature.ofCelsius(conductors),
                        Temperature.ofCelsius(ambient));
        Outcome<Readings> outcome = Simulated.simulation(Simulated.demoMain()).run(scenario);
        assertThat(((Outcome.Rejected<Readings>) outcome).reasons())
                .extracting(Finding::code)
                .containsExactly("electrical.temperature-not-sane");
    }

    @Test
    void whatTheLoomLeavesOpenIsSaid() {
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(device("FIRE", DeviceKind.HEATER, amperes(500), "FEED"))
                        .device(device("LAMP", DeviceKind.LAMP, null, "FEED"))
                        .device(device("ODD", DeviceKind.RELAY, null, "X1", "X2", "X3"))
                        .wire("W1", "G", "FIRE/FEED", "LAMP/FEED")
                        .wire("W2", "G", "FIRE/FEED", "ODD/X1")
                        .loom();
        assertThat(Simulated.run(loom, parked()).findings())
                .extracting(Finding::code)
                .containsExactlyInAnyOrder(
                        "electrical.load-not-sane",
                        "electrical.points-unknown",
                        "electrical.load-unknown",
                        "electrical.no-source");
    }

    @Test
    void everyDeviceOfTheDemonstrationIsKnown() {
        for (Loom loom :
                List.of(Simulated.demoMain(), Simulated.demoEngine(), Simulated.demoAmended())) {
            assertThat(Simulated.run(loom, parked()).findings())
                    .extracting(Finding::code)
                    .doesNotContain("electrical.points-unknown");
        }
    }
}
