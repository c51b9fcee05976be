package org.loomwright.core.electrical.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.testing.Bench;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.time.Duration;
import java.util.List;
import java.util.Objects;

/** Shorts in small looms whose figures were worked out by hand. */
class ShortCircuitsTest {

    private static ShortCircuits shortCircuits(Loom loom) {
        return new ShortCircuits(
                loom,
                TestCatalogue.get(),
                TestCatalogue.electrical(),
                Bench.behaviours(),
                FaultSettings.USUAL);
    }

    private static List<ShortCircuit> shorts(
            Loom loom, ElectricalSettings settings, Scenario scenario) {
        return shortCircuits(loom).in(Bench.shorted(Bench.simulation(loom, settings), scenario));
    }

    private static List<ElectricalFinding> findings(
            Loom loom, List<ShortCircuit> shorts, String... added) {
        return new ShortCircuitFindings(
                        loom, TestCatalogue.get(), FaultSettings.USUAL, List.of(added)::contains)
                .of(shorts);
    }

    private static ShortCircuit get(List<ShortCircuit> shorts, String wire) {
        return shorts.stream()
                .filter(shorted -> shorted.wire().equals(wire))
                .findFirst()
                .orElseThrow();
    }

    /** A segment that with two tails of 100 mm makes a wire of that length. */
    private static LoomSketch sketch(int wireMm) {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", wireMm - 200)
                .device(Bench.device("BATTERY", DeviceKind.BATTERY, null, "LIVE"));
    }

    private static Loom oneWire(int wireMm, String size) {
        return sketch(wireMm)
                .device(Bench.at("N2", "LAMP", DeviceKind.LAMP, Bench.mA(1_750), "FEED"))
                .wire(Bench.wire("W1", size, "BATTERY/LIVE", "LAMP/FEED"))
                .loom();
    }

    private static Device fuse(FuseStyle style, long markedMilliamperes) {
        return Bench.with(
                Bench.device("FUSE", DeviceKind.FUSE, null, "IN", "OUT"),
                new Particulars(
                        null,
                        null,
                        null,
                        null,
                        List.of(new FittedFuse("IN", "OUT", style, Bench.mA(markedMilliamperes)))));
    }

    private static LoomSketch behindFuse(Device fuse, int wireMm, String size) {
        return sketch(wireMm)
                .device(fuse)
                .device(Bench.at("N2", "LAMP", DeviceKind.LAMP, Bench.mA(1_750), "FEED"))
                .wire(Bench.wire("W1", "28/0.30", "BATTERY/LIVE", "FUSE/IN"))
                .wire(Bench.wire("W2", size, "FUSE/OUT", "LAMP/FEED"));
    }

    @Test
    void threeMetresOfThinWireOnABatteryDrawAHundredAndEightyAmperes() {
        ShortCircuit shorted =
                get(shorts(oneWire(3_000, "14/0.30"), Bench.BY_HAND, Bench.parked()), "W1");

        // 12 V / (0.010 + 3 x 0.0189) ohm = 179.910 A. The lamp beside the short carries nothing.
        assertThat(shorted.current().toDoubleAmperes()).isCloseTo(179.910, within(0.002));
        assertThat(shorted.place()).isEqualTo("LAMP/FEED");
        assertThat(shorted.fuse()).isNull();
        Heated wire = shorted.weakest().orElseThrow();
        // 0.9896 mm2 = 1953.0 circular mils; (179.91 / 1953.0)^2 = 0.0084861;
        // 0.0297 log10(394 / 254) = 0.0056627; 0.0056627 / 0.0084861 = 0.6673 s
        assertThat(wire.harmed().toMillis()).isCloseTo(667, within(1L));
        // Onderdonk: log10(1063 / 254 + 1) / 33 = 0.021661; / 0.0084861 = 2.5525 s
        assertThat(wire.melts().toMillis()).isCloseTo(2_552, within(2L));
        assertThat(shorted.opensFirst()).isFalse();
    }

    @Test
    void anUnfusedWireIsAWarningWhereItIsNewAndANoteWhereItIsOriginal() {
        Loom loom = oneWire(3_000, "14/0.30");
        List<ShortCircuit> shorts = shorts(loom, Bench.BY_HAND, Bench.parked());

        ElectricalFinding original = findings(loom, shorts).getFirst();
        ElectricalFinding added = findings(loom, shorts, "W1").getFirst();

        assertThat(original.finding().severity()).isEqualTo(Severity.NOTE);
        assertThat(original.finding().text()).contains("as original", "W1 after 0.67 s", "180 A");
        assertThat(added.finding().severity()).isEqualTo(Severity.WARNING);
        assertThat(added.finding().code()).isEqualTo("electrical.short-unfused");
        assertThat(added.finding().text()).contains("from memory").doesNotContain("original");
        assertThat(added.remedy()).contains("8.75 A");
    }

    @Test
    void aFuseOfTheRightSizeComesFirstAndDarkensWhatIsBehindIt() {
        Loom loom =
                behindFuse(fuse(FuseStyle.GLASS_BLOW_MARKED, 35_000), 3_000, "14/0.30")
                        .device(Bench.device("OTHER", DeviceKind.LAMP, Bench.mA(500), "FEED"))
                        .wire(Bench.wire("W3", "14/0.30", "FUSE/IN", "OTHER/FEED"))
                        .loom();
        List<ShortCircuit> shorts = shorts(loom, Bench.BY_HAND, Bench.parked());
        ShortCircuit shorted = get(shorts, "W2");

        assertThat(Objects.requireNonNull(shorted.fuse()).within())
                .isEqualTo(Duration.ofMillis(100));
        assertThat(shorted.opensFirst()).isTrue();
        assertThat(shorted.dark()).containsExactly("LAMP");
        assertThat(get(shorts, "W1").fuse()).isNull();
        assertThat(findings(loom, shorts))
                .extracting(finding -> finding.finding().subject().id())
                .containsExactly("W1", "W3");
    }

    @ParameterizedTest
    @CsvSource({"'', WARNING", "W2, FAULT", "W1, WARNING"})
    void aFuseThatDoesNotOpenIsWorseOnANewWire(String added, Severity severity) {
        // 6 V behind 0.010 ohm, 12 m of 9/0.30 (0.3528 ohm) and 200 mm of 28/0.30 (0.00188 ohm):
        // 16.45 A, less than twice 30 A.
        Loom loom =
                Bench.loom(
                        behindFuse(fuse(FuseStyle.BLADE, 30_000), 12_000, "9/0.30"),
                        EarthPolarity.POSITIVE,
                        6_000);
        List<ShortCircuit> shorts = shorts(loom, Bench.BY_HAND, Bench.parked());
        assertThat(get(shorts, "W2").current().toDoubleAmperes()).isCloseTo(16.45, within(0.01));

        List<ElectricalFinding> slow =
                findings(loom, shorts, added).stream()
                        .filter(it -> it.finding().subject().id().equals("W2"))
                        .toList();
        assertThat(slow).hasSize(1);
        assertThat(slow.getFirst().finding().code()).isEqualTo("electrical.short-fuse-too-slow");
        assertThat(slow.getFirst().finding().severity()).isEqualTo(severity);
        assertThat(slow.getFirst().finding().text()).contains("not known to open");
        assertThat(slow.getFirst().figure()).isNull();
        // at least twice its continuous current opens a fuse within 5 s: 16.45 / 2
        assertThat(slow.getFirst().remedy()).contains("8.2 A");
    }

    @Test
    void aFuseThatOpensTooLateShowsBothTimes() {
        // 12 V / (0.010 + 0.00188 + 3 x 0.0294) = 119.9 A, 4 times 30 A: up to 0.5 s. 9/0.30 from
        // 20 to 160 °C: 0.62 s.
        // With 1.5 m it is 213.9 A, 7.1 times: 0.1 s against 0.19 s. With 2 x 30 A = 59.95 A no
        // more than 5 s against 2.5 s.
        Loom loom = behindFuse(fuse(FuseStyle.BLADE, 40_000), 3_000, "9/0.30").loom();
        List<ShortCircuit> shorts = shorts(loom, Bench.BY_HAND, Bench.parked());
        ShortCircuit shorted = get(shorts, "W2");

        assertThat(shorted.current().toDoubleAmperes()).isCloseTo(119.89, within(0.05));
        assertThat(shorted.opensFirst()).isFalse();
        ElectricalFinding slow =
                findings(loom, shorts, "W2").stream()
                        .filter(it -> it.finding().subject().id().equals("W2"))
                        .findFirst()
                        .orElseThrow();
        assertThat(slow.margin().orElseThrow().value()).isNegative();
        assertThat(slow.finding().text()).contains("up to 5.0 s (from memory)");
    }

    @Test
    void nobodyJudgesAFuseWhoseMarkingIsNotRecorded() {
        Loom loom =
                behindFuse(
                                Bench.device("FUSE", DeviceKind.FUSE, null, "IN", "OUT"),
                                3_000,
                                "14/0.30")
                        .loom();
        List<ElectricalFinding> found =
                findings(loom, shorts(loom, Bench.BY_HAND, Bench.parked()), "W1", "W2");
        assertThat(found)
                .extracting(it -> it.finding().code())
                .containsExactly("electrical.short-unfused", "electrical.short-fuse-unknown");
    }

    @Test
    void returnsAndWiresBehindALoadAreNotShorts() {
        Loom loom =
                sketch(3_000)
                        .device(
                                Bench.at(
                                        "N2",
                                        "LAMP",
                                        DeviceKind.LAMP,
                                        Bench.mA(5_000),
                                        "FEED",
                                        "EARTH"))
                        .device(
                                Bench.at(
                                        "N2",
                                        "DOOR",
                                        DeviceKind.LAMP,
                                        Bench.mA(5_000),
                                        "FEED",
                                        "SWITCH"))
                        .device(Bench.device("PUSH", DeviceKind.SWITCH, null, "SWITCH"))
                        .device(Bench.device("STUD", DeviceKind.EARTH_POINT, null, "STUD"))
                        .wire(Bench.wire("W1", "14/0.30", "BATTERY/LIVE", "LAMP/FEED"))
                        .wire(Bench.wire("W2", "14/0.30", "LAMP/EARTH", "STUD/STUD"))
                        .wire(Bench.wire("W3", "14/0.30", "LAMP/FEED", "DOOR/FEED"))
                        .wire(Bench.wire("W4", "14/0.30", "DOOR/SWITCH", "PUSH/SWITCH"))
                        .loom();
        for (Scenario scenario : List.of(Bench.parked(), Bench.parked().with("PUSH", "SWITCH"))) {
            assertThat(shorts(loom, Bench.BY_HAND, scenario))
                    .extracting(ShortCircuit::wire)
                    .containsExactly("W1", "W3");
        }
    }

    @Test
    void theBatteryDoesNotFeedAShortedDynamoThroughItsCutOut() {
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(Bench.device("BATTERY", DeviceKind.BATTERY, null, "LIVE"))
                        .device(
                                Bench.device(
                                        "BOX",
                                        DeviceKind.CONTROL_BOX,
                                        null,
                                        "A",
                                        "A1",
                                        "D",
                                        "E",
                                        "F"))
                        .device(Bench.at("N2", "DYNAMO", DeviceKind.DYNAMO, null, "D", "F"))
                        .device(Bench.at("N2", "LAMP", DeviceKind.LAMP, Bench.mA(3_000), "FEED"))
                        .wire(Bench.wire("W1", "84/0.30", "BATTERY/LIVE", "BOX/A"))
                        .wire(Bench.wire("W2", "65/0.30", "DYNAMO/D", "BOX/D"))
                        .wire(Bench.wire("W3", "14/0.30", "BOX/A1", "LAMP/FEED"))
                        .wire(Bench.wire("W4", "14/0.30", "BOX/F", "DYNAMO/F"))
                        .loom();
        Scenario speed = Scenario.of("at speed", Engine.AT_SPEED, Bench.TWENTY);
        List<ShortCircuit> shorts = shorts(loom, ElectricalSettings.USUAL, speed);

        assertThat(get(shorts, "W2").current().toDoubleAmperes()).isCloseTo(22, within(0.1));
        assertThat(get(shorts, "W2").heated()).isEmpty();
        // The box feeds the field from the dynamo: what touches the body there draws the dynamo's
        // output through the regulator, no more.
        assertThat(get(shorts, "W4").current().toDoubleAmperes()).isBetween(20.0, 24.0);
        // The battery gives 12.6 V / (0.010 + 0.003136 x 0.2 x 1.015 + 0.003) less what the dynamo
        // adds over: far more than 22 A.
        assertThat(get(shorts, "W3").current().toDoubleAmperes()).isGreaterThan(200);
        assertThat(findings(loom, shorts, "W2"))
                .extracting(it -> it.finding().subject().id())
                .doesNotContain("W2");
    }
}
