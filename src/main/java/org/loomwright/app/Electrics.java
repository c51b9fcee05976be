package org.loomwright.app;

import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.open.OpenPoints;
import org.loomwright.core.open.OpenReport;
import org.springframework.stereotype.Component;

import java.util.List;

/** Looks at looms from their electrical side. Nothing here touches a store. */
@Component
public class Electrics {

    private final ElectricalParts parts;

    Electrics(ElectricalParts parts) {
        this.parts = parts;
    }

    /** @return the states in which a loom is looked at, with the positions of its own switches */
    public List<Scenario> scenarios(Wiring wiring) {
        return parts.scenarios().of(wiring.loom(), parts.catalogue());
    }

    /** @return what nobody has said about the loom and its additions */
    public OpenReport open(Wiring wiring) {
        return new OpenPoints(parts.catalogue(), parts.behaviours(), parts.expectations())
                .of(wiring.stock(), wiring.amended());
    }

    /** @return what a meter would show in that scenario, or why the loom cannot be in it */
    public Outcome<Readings> readings(Wiring wiring, Scenario scenario) {
        return parts.simulation(wiring.loom()).run(scenario);
    }
}
