/**
 * What happens in a loom when these switches are on and the engine runs like that? Makes a network of the loom and a scenario, solves
 * it, lets relays, cut-out and generator find their state, and reads off current in every wire and voltage at every point.
 *
 * <p>What a device does is data: {@link org.loomwright.core.electrical.simulation.Behaviours} by kind and names of points. Loads count
 * as resistors of nominal voltage over rated current; voltages count from the body in the sense of the supply, so either polarity gives
 * the same figures. Start with {@link org.loomwright.core.electrical.simulation.Simulation}.
 */
@NullMarked
package org.loomwright.core.electrical.simulation;

import org.jspecify.annotations.NullMarked;
