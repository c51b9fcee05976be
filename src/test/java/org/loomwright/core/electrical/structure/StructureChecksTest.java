package org.loomwright.core.electrical.structure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.testing.Bench;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.function.UnaryOperator;

/** Feeds, returns, loose ends, switch sides and room in small looms, and in the demonstration. */
class StructureChecksTest {

    private static final Current ONE_AMPERE = Bench.mA(1_000);

    static List<ElectricalFinding> findings(Loom loom, Loom recorded) {
        return new StructureChecks(
                        loom,
                        new Newcomers(recorded),
                        TestCatalogue.get(),
                        Bench.behaviours(),
                        Tracing.of(loom, TestCatalogue.get(), Bench.behaviours()),
                        StructureSettings.USUAL)
                .findings();
    }

    private static List<Finding> found(Loom loom, Loom recorded, String code) {
        return findings(loom, recorded).stream()
                .map(ElectricalFinding::finding)
                .filter(finding -> finding.code().equals("electrical." + code))
                .toList();
    }

    /** A battery, an ignition switch, a lighting switch, a fuse behind each, and a side lamp. */
    private static LoomSketch car() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 1_000)
                .device(Bench.device("BATTERY", DeviceKind.BATTERY, null, "LIVE"))
                .device(
                        Bench.named(
                                Bench.device("IGN", DeviceKind.SWITCH, null, "FEED", "IGN"),
                                "ignition switch"))
                .device(
                        Bench.named(
                                Bench.device(
                                        "LIGHT", DeviceKind.SWITCH, null, "FEED", "SIDE", "HEAD"),
                                "lighting switch"))
                .device(Bench.device("BOX", DeviceKind.FUSE_BOX, null, "A1", "A2", "A3", "A4"))
                .device(Bench.device("STUD", DeviceKind.EARTH_POINT, null, "STUD"))
                .device(lamp("SIDE-1", "side lamp", "FEED"))
                .wire("W1", "N", "BATTERY/LIVE", "IGN/FEED")
                .wire("W2", "N", "IGN/FEED", "LIGHT/FEED")
                .wire("W3", "N", "IGN/FEED", "BOX/A1")
                .wire("W4", "W", "IGN/IGN", "BOX/A3")
                .wire("W5", "R", "LIGHT/SIDE", "SIDE-1/FEED");
    }

    private static Device lamp(String id, String name, String... points) {
        return Bench.named(Bench.device(id, DeviceKind.LAMP, ONE_AMPERE, points), name);
    }

    private static Loom with(UnaryOperator<LoomSketch> additions) {
        return additions.apply(car()).loom();
    }

    private static List<Finding> added(String code, UnaryOperator<LoomSketch> additions) {
        return found(with(additions), car().loom(), code);
    }

    @Test
    void aSoundLoomHasNoFindings() {
        assertThat(findings(car().loom(), car().loom())).isEmpty();
    }

    @Test
    void aNewLoadWithoutFeedIsAFaultAndARecordedOneAWarning() {
        UnaryOperator<LoomSketch> lonely =
                sketch ->
                        sketch.device(lamp("L", "lamp", "FEED", "EARTH"))
                                .wire("W9", "B", "L/EARTH", "STUD/STUD");
        assertThat(added("no-feed", lonely))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.severity()).isEqualTo(Severity.FAULT);
                            assertThat(it.subject().id()).isEqualTo("L");
                        });
        assertThat(found(with(lonely), with(lonely), "no-feed"))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.severity()).isEqualTo(Severity.WARNING);
                            assertThat(it.text()).contains("recorded so");
                        });
    }

    @Test
    void aLampWithAnEarthPointOfItsOwnNeedsAWireThere() {
        assertThat(
                        added(
                                "no-return",
                                sketch ->
                                        sketch.device(lamp("L", "lamp", "FEED", "EARTH"))
                                                .wire("W9", "R", "LIGHT/SIDE", "L/FEED")))
                .singleElement()
                .satisfies(it -> assertThat(it.text()).contains("L/EARTH"));
        assertThat(
                        added(
                                "no-return",
                                sketch ->
                                        sketch.device(lamp("L", "lamp", "FEED"))
                                                .wire("W9", "R", "LIGHT/SIDE", "L/FEED")))
                .isEmpty();
    }

    @Test
    void aWarningLampBetweenIgnitionAndAlternatorReturnsThroughItsField() {
        assertThat(
                        added(
                                "no-return",
                                sketch ->
                                        sketch.device(lamp("WL", "warning lamp", "IGN", "DYNAMO"))
                                                .device(
                                                        Bench.device(
                                                                "ALT",
                                                                DeviceKind.ALTERNATOR,
                                                                null,
                                                                "B",
                                                                "IND"))
                                                .wire("W9", "W", "LIGHT/SIDE", "WL/IGN")
                                                .wire("W10", "NY", "WL/DYNAMO", "ALT/IND")))
                .isEmpty();
    }

    @Test
    void aWarningLampBetweenIgnitionAndDynamoReturnsThroughTheDynamo() {
        assertThat(
                        added(
                                "no-return",
                                sketch ->
                                        sketch.device(
                                                        Bench.device(
                                                                "DYN",
                                                                DeviceKind.DYNAMO,
                                                                null,
                                                                "D"))
                                                .device(lamp("L", "lamp", "IGN", "DYNAMO"))
                                                .wire("W8", "W", "IGN/IGN", "L/IGN")
                                                .wire("W9", "N", "L/DYNAMO", "DYN/D")))
                .isEmpty();
    }

    @Test
    void aWireToAnEmptyJointFloats() {
        UnaryOperator<LoomSketch> loose =
                sketch ->
                        sketch.device(Bench.device("J", DeviceKind.JOINT, null, "JOINT"))
                                .wire("W9", "R", "LIGHT/SIDE", "J/JOINT");
        assertThat(added("floating-end", loose))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.subject().id()).isEqualTo("W9");
                            assertThat(it.text()).contains("J/JOINT", "live");
                        });
        assertThat(
                        added(
                                "floating-end",
                                sketch ->
                                        loose.apply(sketch)
                                                .device(lamp("L", "lamp", "FEED"))
                                                .wire("W10", "R", "J/JOINT", "L/FEED")))
                .isEmpty();
    }

    @Test
    void aSiblingFedFromBeforeTheSwitchIsNamed() {
        assertThat(
                        added(
                                "wrong-side-of-switch",
                                sketch ->
                                        sketch.device(lamp("SIDE-2", "second side lamp", "FEED"))
                                                .wire("W9", "P", "BOX/A2", "SIDE-2/FEED")))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.severity()).isEqualTo(Severity.WARNING);
                            assertThat(it.text()).contains("SIDE-2", "before LIGHT");
                        });
        assertThat(
                        added(
                                "wrong-side-of-switch",
                                sketch ->
                                        sketch.device(lamp("SIDE-2", "second side lamp", "FEED"))
                                                .wire("W9", "R", "LIGHT/SIDE", "SIDE-2/FEED")))
                .isEmpty();
    }

    private static List<Finding> fan(String feed) {
        Device motor = Bench.device("FAN", DeviceKind.MOTOR, ONE_AMPERE, "FEED");
        return added(
                "wrong-side-of-switch",
                sketch ->
                        sketch.device(Bench.named(motor, "electric fan"))
                                .wire("W9", "P", feed, "FAN/FEED"));
    }

    @Test
    void aFanThatRunsOnWhenParkedIsFound() {
        assertThat(fan("BOX/A2"))
                .singleElement()
                .satisfies(it -> assertThat(it.text()).contains("stays on when the car is parked"));
        assertThat(fan("BOX/A4")).isEmpty();
        assertThat(fan("IGN/IGN")).isEmpty();
    }

    @Test
    void aRelayCountsAsSwitchedByItsCoil() {
        UnaryOperator<LoomSketch> relayed =
                sketch ->
                        sketch.device(
                                        Bench.device(
                                                "RELAY",
                                                DeviceKind.RELAY,
                                                null,
                                                "30",
                                                "87",
                                                "86",
                                                "85"))
                                .device(lamp("FOG", "fog lamp", "FEED"))
                                .wire("W7", "N", "BOX/A2", "RELAY/30")
                                .wire("W8", "P", "RELAY/87", "FOG/FEED")
                                .wire("W9", "B", "RELAY/85", "STUD/STUD");
        assertThat(
                        added(
                                "wrong-side-of-switch",
                                sketch ->
                                        relayed.apply(sketch)
                                                .wire("W10", "R", "LIGHT/SIDE", "RELAY/86")))
                .isEmpty();
        assertThat(
                        added(
                                "wrong-side-of-switch",
                                sketch ->
                                        relayed.apply(sketch)
                                                .wire("W10", "G", "BOX/A4", "RELAY/86")))
                .singleElement()
                .satisfies(it -> assertThat(it.text()).contains("ignition fused"));
    }

    @Test
    void aRadioSwitchedToEarthIsWorseThanALampSwitchedToEarth() {
        UnaryOperator<LoomSketch> lamp =
                sketch ->
                        sketch.device(lamp("L", "map lamp", "FEED", "SWITCH"))
                                .device(Bench.device("K", DeviceKind.SWITCH, null, "SWITCH"))
                                .wire("W8", "P", "BOX/A2", "L/FEED")
                                .wire("W9", "P", "L/SWITCH", "K/SWITCH");
        UnaryOperator<LoomSketch> socket =
                sketch ->
                        sketch.device(
                                        Bench.device(
                                                "S",
                                                DeviceKind.SOCKET,
                                                ONE_AMPERE,
                                                "FEED",
                                                "EARTH"))
                                .device(Bench.device("K", DeviceKind.SWITCH, null, "SWITCH"))
                                .wire("W8", "P", "BOX/A2", "S/FEED")
                                .wire("W9", "P", "S/EARTH", "K/SWITCH");
        assertThat(added("wrong-side-of-switch", lamp))
                .singleElement()
                .satisfies(it -> assertThat(it.severity()).isEqualTo(Severity.NOTE));
        assertThat(added("wrong-side-of-switch", socket))
                .singleElement()
                .satisfies(it -> assertThat(it.severity()).isEqualTo(Severity.WARNING));
    }

    private static Device taking(Device device, int takes) {
        List<Point> points =
                device.points().stream()
                        .map(it -> new Point(it.name(), it.node(), it.tail(), takes))
                        .toList();
        return new Device(device.id(), device.name(), device.kind(), device.load(), points);
    }

    /** Two joints behind the ignition, each taking two ends, the first full. */
    private static LoomSketch joints() {
        return car().device(taking(Bench.device("J1", DeviceKind.JOINT, null, "JOINT"), 2))
                .device(taking(Bench.device("J2", DeviceKind.JOINT, null, "JOINT"), 2))
                .device(taking(Bench.device("J3", DeviceKind.JOINT, null, "JOINT"), 2))
                .device(lamp("L1", "first", "FEED"))
                .device(lamp("L2", "second", "FEED"))
                .wire("W6", "G", "BOX/A4", "J1/JOINT")
                .wire("W7", "G", "BOX/A4", "J2/JOINT")
                .wire("W8", "R", "LIGHT/SIDE", "J3/JOINT")
                .wire("W9", "G", "J1/JOINT", "L1/FEED");
    }

    @Test
    void aFullPointIsNamedWithWhatIsFreeOnTheSameSupply() {
        Loom recorded = joints().loom();
        Loom loom = joints().wire("W10", "G", "J1/JOINT", "L2/FEED").loom();
        assertThat(found(recorded, recorded, "no-room")).isEmpty();
        ElectricalFinding full =
                findings(loom, recorded).stream()
                        .filter(it -> it.finding().code().equals("electrical.no-room"))
                        .findFirst()
                        .orElseThrow();
        assertThat(full.finding().severity()).isEqualTo(Severity.FAULT);
        assertThat(full.finding().subject().id()).isEqualTo("J1/JOINT");
        assertThat(full.finding().text()).contains("3 wire ends", "2 find one", "W10");
        assertThat(full.remedy()).contains("J2/JOINT (1 free)").doesNotContain("J3");
        assertThat(found(loom, loom, "no-room"))
                .singleElement()
                .satisfies(it -> assertThat(it.severity()).isEqualTo(Severity.NOTE));
    }

    @Test
    void aPiggybackTerminalOffersThePlaceThatItTakes() {
        Loom recorded = joints().loom();
        Loom loom =
                joints().wire(
                                new Wire(
                                        "W10",
                                        "second",
                                        recorded.getWire("W9").colour(),
                                        "14/0.30",
                                        LoomSketch.end("J1/JOINT", "blade-6.3-piggyback"),
                                        LoomSketch.end("L2/FEED"),
                                        recorded.getWire("W9").condition()))
                        .loom();
        assertThat(found(loom, recorded, "no-room")).isEmpty();
    }

    @Test
    void aFifthRingUnderOneEarthScrewIsOneTooMany() {
        LoomSketch four = car();
        for (int i = 1; i <= 4; i++) {
            four.device(lamp("L" + i, "lamp", "FEED", "EARTH"))
                    .wire("F" + i, "R", "LIGHT/SIDE", "L" + i + "/FEED")
                    .wire("E" + i, "B", "L" + i + "/EARTH", "STUD/STUD");
        }
        Loom recorded = four.loom();
        Loom loom =
                four.device(lamp("L5", "lamp", "FEED", "EARTH"))
                        .wire("F5", "R", "LIGHT/SIDE", "L5/FEED")
                        .wire("E5", "B", "L5/EARTH", "STUD/STUD")
                        .loom();
        assertThat(found(recorded, recorded, "earth-point-crowded")).isEmpty();
        assertThat(found(loom, recorded, "earth-point-crowded"))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.severity()).isEqualTo(Severity.WARNING);
                            assertThat(it.text()).contains("5 wire ends", "new: E5", "no source");
                        });
        assertThat(found(loom, loom, "earth-point-crowded"))
                .singleElement()
                .satisfies(it -> assertThat(it.severity()).isEqualTo(Severity.NOTE));
    }

    @Test
    void theRecordedDemonstrationIsNotAccused() {
        for (Loom loom : List.of(DemoLooms.main(), DemoLooms.engine())) {
            assertThat(findings(loom, loom))
                    .allMatch(it -> it.finding().severity() == Severity.NOTE)
                    .allMatch(StructureChecksTest::isOfTerminalSize);
        }
    }

    /** What a terminal takes is from memory only, so which wires are named is no matter of this test. */
    private static boolean isOfTerminalSize(ElectricalFinding found) {
        return found.finding().code().equals("electrical.terminal-size");
    }

    @Test
    void theAdditionsOfTheDemonstrationLeaveOpenOnlyWhichEarthTheSocketNeeds() {
        assertThat(findings(DemoLooms.amended().loom(), DemoLooms.main()))
                .filteredOn(it -> !isOfTerminalSize(it))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.finding().code()).isEqualTo("electrical.polarity");
                            assertThat(it.finding().severity()).isEqualTo(Severity.WARNING);
                            assertThat(it.finding().subject().id()).isEqualTo("SOCKET");
                        });
    }

    @Test
    void aWireRenewedInItsPlaceIsNotNewButOneOnAnotherPointIs() {
        Newcomers newcomers = new Newcomers(DemoLooms.main());
        Loom amended = DemoLooms.amended().loom();
        assertThat(newcomers.isNew(amended.getWire("W010"))).isFalse();
        assertThat(newcomers.isNew(amended.getWire("W029"))).isTrue();
        assertThat(newcomers.isNew(amended.getWire("W101"))).isTrue();
        assertThat(newcomers.isNew(amended.getWire("W001"))).isFalse();
    }
}
