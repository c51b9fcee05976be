package org.loomwright.core.electrical.check.current;

import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Loom;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** A changed loom and what was simulated of it so far: one change is often tried for several figures. Not thread-safe. */
final class Trial {

    private final Loom loom;
    private final Simulation simulation;
    private final Map<String, Optional<Readings>> readings = new HashMap<>();
    private final AllowedCurrents wires;

    Trial(Loom loom, AllowedCurrents wires, Simulation simulation) {
        this.loom = loom;
        this.wires = wires;
        this.simulation = simulation;
    }

    AllowedCurrents wires() {
        return wires;
    }

    Loom loom() {
        return loom;
    }

    /** Nothing where the changed loom cannot be in that scenario. */
    Optional<Readings> readings(Scenario scenario) {
        return readings.computeIfAbsent(scenario.name(), name -> run(scenario));
    }

    private Optional<Readings> run(Scenario scenario) {
        return switch (simulation.run(scenario)) {
            case Outcome.Accepted<Readings>(Readings accepted) -> Optional.of(accepted);
            case Outcome.Rejected<Readings> refused -> Optional.empty();
        };
    }
}
