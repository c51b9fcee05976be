package org.loomwright.core.electrical.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.Map;

class TracingTest {

    private static final Loom AMENDED = DemoLooms.amended().loom();
    private static final Tracing TRACING = trace(AMENDED);

    private static Tracing trace(Loom loom) {
        return Tracing.of(loom, TestCatalogue.get(), ElectricalFiles.behaviours());
    }

    @ParameterizedTest(name = "{0} is {1} from {2}")
    @CsvSource({
        "W001, LIVE, BATTERY",
        "W004, LIVE, BATTERY",
        "W005, LIVE, GENERATOR",
        "W008, LIVE, GENERATOR",
        "W046, LIVE, BATTERY_FUSED",
        "W012, LIVE, IGNITION",
        "W020, LIVE, IGNITION",
        "W024, LIVE, IGNITION_FUSED",
        "W035, LIVE, IGNITION_FUSED",
        "W063, LIVE, SIDE_LAMPS",
        "W069, LIVE, SIDE_LAMPS",
        "W076, LIVE, HEADLAMPS",
        "W018, EARTH_SIDE, IGNITION",
        "W028, EARTH_SIDE, IGNITION_FUSED",
        "W041, EARTH_SIDE, IGNITION_FUSED",
        "W051, EARTH_SIDE, BATTERY_FUSED",
        "W106, EARTH_SIDE, IGNITION_FUSED",
        "W002, RETURN, NONE",
        "W066, RETURN, SIDE_LAMPS",
        "W104, RETURN, BATTERY_FUSED",
        "W006, LIVE, GENERATOR",
    })
    void readsRoleAndSupplyOfTheDemonstration(String wire, Role role, Supply supply) {
        assertThat(TRACING.get(wire).role()).isEqualTo(role);
        assertThat(TRACING.get(wire).supply()).isEqualTo(supply);
    }

    @Test
    void namesTheNearestFuse() {
        assertThat(TRACING.get("W118").fuse().map(Passed::device)).contains("REVERSE-FUSE");
        assertThat(TRACING.get("W116").fuse()).isEmpty();
        assertThat(TRACING.get("W120").fuse().map(Passed::device)).contains("REVERSE-FUSE");
    }

    @Test
    void tellsTheWayFromTheBattery() {
        assertThat(TRACING.get("W118").path())
                .extracting(Passed::device)
                .containsExactly(
                        "AMMETER", "CONTROL-BOX", "IGN-SWITCH", "REVERSE-FUSE", "REVERSE-SWITCH");
        assertThat(TRACING.get("W118").last(Element.CONTACT).map(Passed::to)).contains("OUT");
    }

    @Test
    void collectsTheLoadsOfEveryWire() {
        assertThat(TRACING.get("W101").loads())
                .containsExactly("FAN-MOTOR", "FOGLAMP-NS", "FOGLAMP-OS", "SOCKET");
        assertThat(TRACING.get("W051").loads()).containsExactly("HORN-NS", "HORN-OS");
        assertThat(TRACING.get("W008").loads()).containsExactly("IGN-LAMP");
        assertThat(TRACING.get("W119").serves()).containsExactly("reversing-lamps");
    }

    @Test
    void aLoadBelongsToEveryWayThatLeadsOnToTheBody() {
        assertThat(TRACING.get("W056").loads()).containsExactly("INTERIOR-LAMP");
        assertThat(TRACING.get("W057").loads()).containsExactly("INTERIOR-LAMP");
    }

    @Test
    void everyWireIsJoinedToSomething() {
        assertThat(TRACING.all()).extracting(WireTrace::role).doesNotContain(Role.LOOSE);
    }

    @Test
    void theFieldOfTheDynamoIsWhatItsWireIsFor() {
        assertThat(TRACING.get("W006").loads()).containsExactly("DYNAMO");
    }

    @Test
    void saysWhatAWireFromAPointWouldBeFedFrom() {
        assertThat(TRACING.supplyAt("FUSE-BOX/A2")).contains(Supply.BATTERY_FUSED);
        assertThat(TRACING.supplyAt("FUSE-BOX/A3")).contains(Supply.IGNITION);
        assertThat(TRACING.supplyAt("LIGHT-SWITCH/SIDE")).contains(Supply.SIDE_LAMPS);
        assertThat(TRACING.supplyAt("EARTH-DASH/STUD")).isEmpty();
        assertThat(TRACING.supplyAt("HORN-PUSH/PUSH")).isEmpty();
        assertThat(TRACING.isReturn("EARTH-DASH/STUD")).isTrue();
        assertThat(TRACING.reachesBody("HORN-PUSH/PUSH")).isTrue();
        assertThat(TRACING.isReturn("HORN-PUSH/PUSH")).isFalse();
    }

    @Test
    void aWireWithoutItsFeedIsLoose() {
        Loom cut =
                Amendments.apply(
                                DemoLooms.main(),
                                List.of(new Amendment.RemoveWire("A1", "", "W022")),
                                TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()))
                        .loom();

        WireTrace trace = trace(cut).get("W024");

        assertThat(trace.role()).isEqualTo(Role.LOOSE);
        assertThat(trace.supply()).isEqualTo(Supply.NONE);
        assertThat(trace.source()).isNull();
    }

    @Test
    void theDirectionInWhichAWireWasWrittenDownDoesNotMatter() {
        Tracing turned = trace(turned(AMENDED));

        for (WireTrace trace : TRACING.all()) {
            WireTrace other = turned.get(trace.wire());
            assertThat(other.role()).isEqualTo(trace.role());
            assertThat(other.supply()).isEqualTo(trace.supply());
            assertThat(other.path()).isEqualTo(trace.path());
            assertThat(other.loads()).isEqualTo(trace.loads());
            if (trace.source() != null) {
                assertThat(other.source()).isEqualTo(trace.source() == Side.A ? Side.B : Side.A);
            }
        }
    }

    private static Loom turned(Loom loom) {
        LoomDocument document = loom.document();
        List<Wire> wires =
                document.wires().stream()
                        .map(
                                wire ->
                                        new Wire(
                                                wire.id(),
                                                wire.circuit(),
                                                wire.colour(),
                                                wire.size(),
                                                wire.b(),
                                                wire.a(),
                                                wire.condition()))
                        .toList();
        LoomDocument turned =
                new LoomDocument(
                        document.name(),
                        document.vehicle(),
                        document.datum(),
                        document.nodes(),
                        document.segments(),
                        document.devices(),
                        wires,
                        document.checks());
        return LoomChecker.check(turned, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    @Test
    void takesTheServiceFromTheNameWhereNobodySaidIt() {
        Map<String, String> services =
                Map.of(
                        "FOGLAMP-OS", "fog-lamps",
                        "REVERSE-SWITCH", "reversing-lamps",
                        "LIGHT-SWITCH", "lighting",
                        "IGN-SWITCH", "ignition");
        services.forEach(
                (device, service) ->
                        assertThat(
                                        Tracing.serviceOf(
                                                AMENDED.getDevice(device), TestCatalogue.get()))
                                .map(Service::code)
                                .contains(service));
    }

    @Test
    void anUnknownWireIsAMistakeOfTheCaller() {
        assertThatThrownBy(() -> TRACING.get("W999"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("W999");
    }
}
