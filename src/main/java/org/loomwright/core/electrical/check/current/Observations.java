package org.loomwright.core.electrical.check.current;

import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.loom.Loom;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A loom in all its scenarios.
 *
 * @param loom the loom
 * @param wires what its wires may carry
 * @param scenarios one for each of the readings, in their order
 */
record Observations(Loom loom, AllowedCurrents wires, List<Observed> scenarios) {

    Observations {
        scenarios = List.copyOf(scenarios);
    }

    static Observations of(Loom loom, AllowedCurrents wires, List<Readings> readings) {
        return new Observations(
                loom, wires, readings.stream().map(one -> observe(loom, wires, one)).toList());
    }

    private static Observed observe(Loom loom, AllowedCurrents wires, Readings readings) {
        Flow flow = new Flow(loom, readings);
        return new Observed(flow, wires.in(readings), flow.paths());
    }

    /** The scenario in which the figure is greatest, the first of several; none where it is nowhere more than zero. */
    Optional<Observed> worst(ToDoubleFunction<Observed> figure) {
        Observed worst = null;
        double most = 0;
        for (Observed observed : scenarios) {
            double value = figure.applyAsDouble(observed);
            if (value > most) {
                most = value;
                worst = observed;
            }
        }
        return Optional.ofNullable(worst);
    }

    boolean has(String scenario) {
        return scenarios.stream().anyMatch(one -> one.scenario().equals(scenario));
    }

    /** The greatest figure of all scenarios, not negative. */
    double most(ToDoubleFunction<Observed> figure) {
        return scenarios.stream().mapToDouble(figure).reduce(0, Math::max);
    }
}
