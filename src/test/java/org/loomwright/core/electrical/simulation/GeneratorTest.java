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
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.testing.LoomSketch;

import java.util.Arrays;
import java.util.List;

/** Dynamos with their fields, alternators with their warning lamps, what both give, and flashers. */
class GeneratorTest {

    private static final String NOT_EXCITED = "electrical.generator-not-excited";

    private static Device device(
            String id, DeviceKind kind, @Nullable Integer milliamperes, String... points) {
        Current load = milliamperes == null ? null : Current.ofMilliamperes(milliamperes);
        return new Device(id, kind.words() + " " + id, kind, load, points(points));
    }

    private static List<Point> points(String... names) {
        return Arrays.stream(names)
                .map(name -> new Point(name, "N1", Length.ofMillimetres(100)))
                .toList();
    }

    private static Device rated(String id, DeviceKind kind, long amperes, String... points) {
        Particulars particulars =
                new Particulars(
                        null, Current.ofMilliamperes(amperes * 1_000), null, null, List.of());
        return new Device(id, id, kind, null, particulars, points(points));
    }

    private static LoomSketch sketch() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 1_000)
                .device(device("BATTERY", DeviceKind.BATTERY, null, "LIVE"))
                .device(device("IGN", DeviceKind.SWITCH, null, "FEED", "IGN"))
                .device(device("FIRE", DeviceKind.HEATER, 40_000, "FEED"))
                .wire("W01", "N", "BATTERY/LIVE", "IGN/FEED")
                .wire("W02", "N", "BATTERY/LIVE", "FIRE/FEED");
    }

    /** Warning lamp of 2.2 W between ignition and alternator. */
    private static LoomSketch alternator(Device alternator, @Nullable Integer lampMilliamperes) {
        return sketch().device(alternator)
                .device(device("LAMP", DeviceKind.LAMP, lampMilliamperes, "IGN", "DYNAMO"))
                .wire("W03", "N", "A/B", "BATTERY/LIVE")
                .wire("W04", "W", "IGN/IGN", "LAMP/IGN")
                .wire("W05", "NY", "LAMP/DYNAMO", "A/IND");
    }

    private static Device plainAlternator() {
        return device("A", DeviceKind.ALTERNATOR, null, "B", "IND");
    }

    private static LoomSketch dynamo(Device dynamo) {
        return sketch().device(dynamo)
                .device(device("BOX", DeviceKind.CONTROL_BOX, null, "A", "A1", "D", "F", "E"))
                .wire("W03", "N", "BOX/A", "BATTERY/LIVE")
                .wire("W04", "NY", "BOX/D", "D1/D");
    }

    private static Device plainDynamo() {
        return device("D1", DeviceKind.DYNAMO, null, "D", "F");
    }

    private static Scenario running(Engine engine) {
        return Scenario.of("drive", engine, Simulated.TWENTY).with("IGN", "IGN");
    }

    private static ElementReading only(Readings readings, String device, Element element) {
        return readings.ofDevice(device).stream()
                .filter(reading -> reading.element() == element)
                .findFirst()
                .orElseThrow();
    }

    private static double volts(Readings readings, String device) {
        return only(readings, device, Element.LOAD).across().toDoubleVolts();
    }

    @Test
    void theWarningLampExcitesAnAlternatorAndGoesOut() {
        Loom loom = alternator(plainAlternator(), 180).loom();
        Readings standing = Simulated.run(loom, running(Engine.OFF));
        Readings turning = Simulated.run(loom, running(Engine.AT_SPEED));

        // Lamp of 12 V / 0.18 A = 66.7 ohm before a field of 12 V / 3 A = 4 ohm on about 12.2 V.
        assertThat(volts(standing, "LAMP")).isCloseTo(12.2 * 66.7 / 70.7, within(0.2));
        assertThat(standing.findings()).isEmpty();
        assertThat(volts(turning, "LAMP")).isCloseTo(0, within(0.5));
        assertThat(only(turning, "A", Element.GENERATOR).current().toDoubleAmperes())
                .isGreaterThan(40);
        assertThat(turning.findings()).isEmpty();
    }

    @Test
    void withABlownLampAnAlternatorGivesNothing() {
        Readings readings =
                Simulated.run(alternator(plainAlternator(), null).loom(), running(Engine.AT_SPEED));
        assertThat(readings.of(Element.GENERATOR)).isEmpty();
        assertThat(readings.findings())
                .filteredOn(finding -> finding.code().equals(NOT_EXCITED))
                .singleElement()
                .satisfies(
                        finding ->
                                assertThat(finding.text())
                                        .contains(
                                                "A", "IND", "gets 0 A", "0.08 A", "warning lamp"));
    }

    @Test
    void aWarningLampThatIsTooSmallDoesNotExcite() {
        Loom loom = alternator(plainAlternator(), 60).loom();
        assertThat(codes(Simulated.run(loom, running(Engine.AT_SPEED)))).contains(NOT_EXCITED);
        assertThat(codes(Simulated.run(loom, running(Engine.OFF)))).doesNotContain(NOT_EXCITED);
    }

    @Test
    void anAlternatorOfWhichNoIndicatorPointIsRecordedExcitesItself() {
        Loom loom =
                sketch().device(device("A", DeviceKind.ALTERNATOR, null, "B"))
                        .wire("W03", "N", "A/B", "BATTERY/LIVE")
                        .loom();
        Readings readings = Simulated.run(loom, running(Engine.AT_SPEED));
        assertThat(only(readings, "A", Element.GENERATOR).current().toDoubleAmperes())
                .isGreaterThan(40);
    }

    @Test
    void aDynamoFeedsItsFieldThroughTheControlBox() {
        Loom loom = dynamo(plainDynamo()).wire("W05", "NG", "BOX/F", "D1/F").loom();
        Readings readings = Simulated.run(loom, running(Engine.AT_SPEED));

        assertThat(readings.getWire("W05").current()).isEqualTo(Current.ofMilliamperes(1_500));
        assertThat(readings.getWire("W04").current()).isEqualTo(Current.ofMilliamperes(-23_500));
        assertThat(only(readings, "D1", Element.GENERATOR).current())
                .isEqualTo(Current.ofMilliamperes(22_000));
        assertThat(readings.getWire("W03").current()).isEqualTo(Current.ofMilliamperes(22_000));
        assertThat(readings.findings()).isEmpty();
    }

    @Test
    void withoutItsFieldWireADynamoGivesNothing() {
        Readings readings = Simulated.run(dynamo(plainDynamo()).loom(), running(Engine.AT_SPEED));
        assertThat(readings.getWire("W03").current()).isEqualTo(Current.ZERO);
        assertThat(readings.of(Element.CUT_OUT)).isEmpty();
        assertThat(readings.findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo(NOT_EXCITED);
                            assertThat(finding.text()).contains("D1", "F", "control box");
                        });
    }

    @Test
    void aDynamoWithLittleToDoKeepsItsVoltage() {
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(device("BATTERY", DeviceKind.BATTERY, null, "LIVE"))
                        .device(plainDynamo())
                        .device(device("BOX", DeviceKind.CONTROL_BOX, null, "A", "D", "F"))
                        .device(device("LAMP", DeviceKind.LAMP, 5_000, "FEED"))
                        .wire("W01", "NY", "BOX/D", "D1/D")
                        .wire("W02", "NG", "BOX/F", "D1/F")
                        .wire("W03", "N", "BOX/A", "LAMP/FEED")
                        .loom();
        Readings readings =
                Simulated.run(loom, Scenario.of("drive", Engine.AT_SPEED, Simulated.TWENTY));
        double given = only(readings, "D1", Element.GENERATOR).current().toDoubleAmperes();
        assertThat(given).isCloseTo(readings.drawn().toDoubleAmperes(), within(0.002));
        // 14.2 V less 20 mohm x (5.8 + 1.5) A inside the dynamo.
        assertThat(readings.points().get("D1/D"))
                .satisfies(
                        volts -> {
                            assertThat(volts).isNotNull();
                            assertThat(volts.toDoubleVolts())
                                    .isCloseTo(14.2 - 0.02 * (given + 1.5), within(0.002));
                        });
    }

    /** An alternator's idle share is that of the usual one: 20 of 45 A. */
    @ParameterizedTest
    @CsvSource({
        "DYNAMO, 25, AT_SPEED, 25000",
        "DYNAMO, 11, AT_SPEED, 11000",
        "ALTERNATOR, 36, AT_SPEED, 36000",
        "ALTERNATOR, 36, IDLE, 16000",
        "ALTERNATOR, 36, OFF, 0"
    })
    void theRatingOfAGeneratorIsWhatItGivesAtSpeed(
            DeviceKind kind, long amperes, Engine engine, long expectedMilliamperes) {
        String live = kind == DeviceKind.DYNAMO ? "D" : "B";
        Loom loom =
                sketch().device(rated("G", kind, amperes, live))
                        .wire("W03", "N", "G/" + live, "BATTERY/LIVE")
                        .loom();
        Scenario scenario = Scenario.of("drive", engine, Simulated.TWENTY);
        long given =
                Simulated.run(loom, scenario).of(Element.GENERATOR).stream()
                        .mapToLong(reading -> Math.abs(reading.current().milliamperes()))
                        .sum();
        assertThat(given).isEqualTo(expectedMilliamperes);
    }

    @Test
    void atIdleADynamoIsCutOut() {
        Device dynamo = rated("D1", DeviceKind.DYNAMO, 25, "D", "F");
        Loom loom = dynamo(dynamo).wire("W05", "NG", "BOX/F", "D1/F").loom();
        assertThat(Simulated.run(loom, running(Engine.AT_SPEED)).getWire("W03").current())
                .isEqualTo(Current.ofMilliamperes(25_000));
        Readings idle = Simulated.run(loom, running(Engine.IDLE));
        assertThat(idle.getWire("W03").current()).isEqualTo(Current.ZERO);
        assertThat(idle.findings()).isEmpty();
    }

    @Test
    void flashingLampsDrawTheirShareOfTheTime() {
        Loom loom = Simulated.demoMain();
        Scenario off = running(Engine.OFF, "IGN-SWITCH");
        Readings steady = Simulated.run(loom, off);
        Readings left = Simulated.run(loom, off.with("INDICATOR-SWITCH", "LEFT"));
        Ratio half = new Ratio(500_000);

        assertThat(steady.drawnOnAverage(half)).isEqualTo(steady.drawn());
        // Two lamps of 1.75 A and the warning lamp of 0.18 A at about 12 V, half of the time.
        double saved = left.drawn().toDoubleAmperes() - left.drawnOnAverage(half).toDoubleAmperes();
        assertThat(saved).isCloseTo((1.75 + 1.75 + 0.18) / 2, within(0.1));
        assertThat(left.drawnOnAverage(Ratio.ONE)).isEqualTo(left.drawn());
    }

    private static Scenario running(Engine engine, String ignition) {
        return Scenario.of("drive", engine, Simulated.TWENTY).with(ignition, "IGN");
    }

    @Test
    void aStabiliserPassesTheCurrentOfItsGauges() {
        Loom loom =
                sketch().device(device("STABILISER", DeviceKind.GAUGE, null, "IN", "OUT"))
                        .device(device("GAUGE", DeviceKind.GAUGE, 200, "FEED", "SENDER"))
                        .device(device("SENDER", DeviceKind.SENDER, null, "SENDER"))
                        .wire("W03", "G", "IGN/IGN", "STABILISER/IN")
                        .wire("W04", "G", "STABILISER/OUT", "GAUGE/FEED")
                        .wire("W05", "GB", "GAUGE/SENDER", "SENDER/SENDER")
                        .loom();
        Readings readings = Simulated.run(loom, running(Engine.OFF));
        assertThat(readings.getWire("W03").current().toDoubleAmperes())
                .isCloseTo(0.2, within(0.01));
        assertThat(codes(readings)).doesNotContain("electrical.load-unknown");
    }

    private static List<String> codes(Readings readings) {
        return readings.findings().stream().map(Finding::code).toList();
    }
}
