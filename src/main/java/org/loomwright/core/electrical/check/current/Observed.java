package org.loomwright.core.electrical.check.current;

import java.util.List;

/**
 * One scenario, ready to be checked.
 *
 * @param flow what flows where
 * @param currents what the wires carry and may carry
 * @param paths the ways of the loads that are on
 */
record Observed(Flow flow, InScenario currents, List<LoadPath> paths) {

    Observed {
        paths = List.copyOf(paths);
    }

    String scenario() {
        return flow.scenario();
    }
}
