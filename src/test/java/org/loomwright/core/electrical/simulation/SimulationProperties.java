package org.loomwright.core.electrical.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.VehicleLooms;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** Kirchhoff's laws in every standard scenario of random looms, tree-like ones and such with loops. */
class SimulationProperties {

    private static final int WIRES = 90;

    static Stream<Loom> looms() {
        return LongStream.rangeClosed(1, 12)
                .boxed()
                .flatMap(
                        seed ->
                                Stream.of(
                                        VehicleLooms.of(seed, WIRES),
                                        VehicleLooms.of(seed, WIRES, 8)));
    }

    private static List<Scenario> scenarios(Loom loom) {
        return ElectricalFiles.scenarios().of(loom, TestCatalogue.get());
    }

    /** The finding says that the residual at some node is more than 1e-9 of the greatest current. */
    @ParameterizedTest
    @MethodSource("looms")
    void theResidualIsBelowOneInAThousandMillion(Loom loom) {
        Simulation simulation = Simulated.simulation(loom);
        for (Scenario scenario : scenarios(loom)) {
            assertThat(Simulated.run(simulation, scenario).findings())
                    .extracting(Finding::code)
                    .doesNotContain("electrical.not-exact");
        }
    }

    @ParameterizedTest
    @MethodSource("looms")
    void whatComesToAPointLeavesIt(Loom loom) {
        Simulation simulation = Simulated.simulation(loom);
        for (Scenario scenario : scenarios(loom)) {
            Sums sums = new Sums();
            Readings readings = Simulated.run(simulation, scenario);
            for (WireReading reading : readings.wires()) {
                Wire wire = loom.getWire(reading.wire());
                sums.flow(wire.a().place(), wire.b().place(), reading.current().milliamperes());
            }
            readings.elements().forEach(element -> sums.flow(element, loom));
            sums.assertBalanced(scenario.name());
        }
    }

    /** Currents are whole milliamperes, so that each may be off by half of one. */
    private static final class Sums {

        private final Map<String, Long> milliamperes = new HashMap<>();
        private final Map<String, Integer> terms = new HashMap<>();

        void flow(String from, String to, long current) {
            add(from, -current);
            add(to, current);
        }

        /** A source counts what it gives; a dynamo also feeds its own field. */
        void flow(ElementReading element, Loom loom) {
            String from = element.device() + "/" + element.from();
            String to =
                    element.to().equals("body") ? "body" : element.device() + "/" + element.to();
            long current = element.current().milliamperes();
            boolean isField = element.element() == Element.FIELD;
            boolean gives =
                    element.element() == Element.SOURCE || element.element() == Element.GENERATOR;
            flow(from, to, gives && !isStandingResistor(element) ? -current : current);
            if (isField) {
                flow("body", element.device() + "/D", fieldTakenFromOutput(current));
            }
        }

        /** The reading of a generator that gives leaves out the field current, which is the usual one or next to none. */
        private static long fieldTakenFromOutput(long current) {
            return Math.abs(current) >= 1_000 ? current : 0;
        }

        private static boolean isStandingResistor(ElementReading element) {
            return element.element() == Element.GENERATOR
                    && Math.abs(element.across().millivolts()) < 500;
        }

        private void add(String place, long current) {
            milliamperes.merge(place, current, Long::sum);
            terms.merge(place, 1, Integer::sum);
        }

        void assertBalanced(String scenario) {
            milliamperes.forEach(
                    (place, sum) ->
                            assertThat((double) Math.abs(sum))
                                    .as("%s in '%s'", place, scenario)
                                    .isLessThanOrEqualTo(0.5 * terms.getOrDefault(place, 0)));
        }
    }
}
