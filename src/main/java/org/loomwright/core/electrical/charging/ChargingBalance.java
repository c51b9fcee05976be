package org.loomwright.core.electrical.charging;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.quantity.Current;

import java.math.BigDecimal;

/**
 * Generator against loads in one scenario. The battery takes as many ampere-hours in an hour as the balance has amperes, or gives them
 * where it is negative.
 *
 * @param scenario its name
 * @param engine how the engine runs
 * @param output what the generators can give
 * @param drawn what loads and coils draw on average
 * @param balance output less drawn
 * @param hoursToFlat how long a full battery makes up for a negative balance, to a tenth of an hour, or null where it need not
 */
public record ChargingBalance(
        String scenario,
        Engine engine,
        Current output,
        Current drawn,
        Current balance,
        @Nullable BigDecimal hoursToFlat) {

    /** @return whether the battery loses charge */
    public boolean isNegative() {
        return balance.milliamperes() < 0;
    }
}
