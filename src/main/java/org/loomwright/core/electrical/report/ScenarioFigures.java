package org.loomwright.core.electrical.report;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.charging.ChargingBalance;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.quantity.Current;

/**
 * One state of the vehicle in figures.
 *
 * @param scenario the state, with the positions of this loom's switches
 * @param drawn what all loads together draw at the most
 * @param charging generator against loads
 * @param recordedDrawn what they drew in the recorded loom, or null where it could not be in that state
 * @param recordedCharging the same of its charging
 */
public record ScenarioFigures(
        Scenario scenario,
        Current drawn,
        ChargingBalance charging,
        @Nullable Current recordedDrawn,
        @Nullable ChargingBalance recordedCharging) {}
