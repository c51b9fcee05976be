package org.loomwright.core.electrical.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.electrical.simulation.ShortedNet.Drawn;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.VehicleLooms;

import java.util.List;
import java.util.stream.Stream;

/** A loom that is settled once and asked for everything, beside looms that are simulated for each question. */
class SettledLoomProperties {

    static Stream<Loom> looms() {
        return Stream.of(
                DemoLooms.main(),
                DemoLooms.amended().loom(),
                VehicleLooms.of(3, 90),
                VehicleLooms.of(4, 90, 8));
    }

    private static SettledLoom settled(Loom loom, Scenario scenario) {
        return Simulated.simulation(loom).settle(scenario).orElseThrow(Simulated::refusal);
    }

    private static List<Drawn> drawn(Loom loom, ShortedNet net) {
        return loom.wires().values().stream().map(Wire::b).map(end -> net.at(end.place())).toList();
    }

    @ParameterizedTest
    @MethodSource("looms")
    void oneSettledLoomAnswersAsSeparateSimulationsDo(Loom loom) {
        for (Scenario scenario : ElectricalFiles.scenarios().of(loom, TestCatalogue.get())) {
            SettledLoom settled = settled(loom, scenario);
            List<Drawn> shorts = drawn(loom, settled.shorted());
            assertThat(settled.readings())
                    .isEqualTo(Simulated.run(Simulated.simulation(loom), scenario));
            assertThat(shorts).isEqualTo(drawn(loom, settled(loom, scenario).shorted()));
            assertThat(drawn(loom, settled.shorted())).isEqualTo(shorts);
        }
    }

    @ParameterizedTest
    @MethodSource("looms")
    void theVoltageBeforeAShortIsThatOfTheReadingsUnlessTheGeneratorIsHeldToItsOutput(Loom loom) {
        for (Scenario scenario : ElectricalFiles.scenarios().of(loom, TestCatalogue.get())) {
            if (scenario.engine() == Scenario.Engine.OFF) {
                SettledLoom settled = settled(loom, scenario);
                ShortedNet net = settled.shorted();
                settled.readings()
                        .points()
                        .forEach(
                                (place, volts) ->
                                        assertThat(net.open(place)).as(place).isEqualTo(volts));
            }
        }
    }
}
