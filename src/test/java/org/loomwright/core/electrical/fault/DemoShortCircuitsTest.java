package org.loomwright.core.electrical.fault;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.Bench;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What shorts and opened fuses do to the demonstration with its additions. */
class DemoShortCircuitsTest {

    private static final Loom STOCK = DemoLooms.main();
    private static final Loom AMENDED = DemoLooms.amended().loom();

    private static List<ShortCircuit> worst() {
        Scenario night = Bench.winterNight(Engine.AT_SPEED).with("FOG-SWITCH", "OUT");
        Simulation simulation = Bench.simulation(AMENDED);
        return new ShortCircuits(
                        AMENDED,
                        TestCatalogue.get(),
                        TestCatalogue.electrical(),
                        Bench.behaviours(),
                        FaultSettings.USUAL)
                .worst(
                        List.of(
                                Bench.shorted(simulation, Bench.parked()),
                                Bench.shorted(simulation, night)));
    }

    private static List<ElectricalFinding> findings() {
        return new ShortCircuitFindings(
                        AMENDED,
                        TestCatalogue.get(),
                        FaultSettings.USUAL,
                        wire -> !STOCK.wires().containsKey(wire))
                .of(worst());
    }

    @Test
    void newWiresWithoutAFuseAreWarnedOfAndOriginalOnesOnlyNoted() {
        Map<Severity, List<String>> unfused =
                findings().stream()
                        .map(ElectricalFinding::finding)
                        .filter(finding -> finding.code().equals("electrical.short-unfused"))
                        .collect(
                                Collectors.groupingBy(
                                        finding -> finding.severity(),
                                        Collectors.mapping(
                                                finding -> finding.subject().id(),
                                                Collectors.toList())));
        // Three fuses in a row on the starter switch, the lead to the reversing fuse, the fog
        // relay's coil and the voltmeter's lamp.
        assertThat(unfused.get(Severity.WARNING))
                .containsExactly("W101", "W107", "W109", "W110", "W116", "W122", "W127");
        assertThat(unfused.get(Severity.NOTE))
                .contains("W001", "W009", "W075")
                .allMatch(wire -> STOCK.wires().containsKey(wire));
    }

    @Test
    void noWireIsNamedTwiceForOneRule() {
        assertThat(findings())
                .extracting(it -> it.finding().code() + " " + it.finding().subject().id())
                .doesNotHaveDuplicates();
    }

    @Test
    void theSideLampFeedIsAShortOnlyWhileTheSwitchIsOn() {
        assertThat(worst())
                .filteredOn(shorted -> shorted.wire().equals("W059"))
                .singleElement()
                .satisfies(shorted -> assertThat(shorted.scenario()).isEqualTo("winter night"));
    }

    @Test
    void aFuseTakesWithItWhatItsRelayFeeds() {
        Map<String, List<String>> losses =
                new FuseLosses(AMENDED, Bench.behaviours())
                        .all().stream()
                                .collect(
                                        Collectors.toMap(
                                                loss -> loss.device() + " " + loss.from(),
                                                loss -> List.copyOf(loss.dark())));
        assertThat(losses)
                .hasSize(6)
                .containsEntry(
                        "FUSE-BOX A1", List.of("BOOT-LAMP", "HORN-NS", "HORN-OS", "INTERIOR-LAMP"))
                .containsEntry(
                        "REVERSE-FUSE IN",
                        List.of("FAN-MOTOR", "REVERSELAMP-NS", "REVERSELAMP-OS"));
    }
}
