/**
 * What if a wire touched the body, what if a fuse opened: how much would flow, what would burn, whether the fuse comes first, which lamps go
 * dark.
 *
 * <p>A what-if is one state of the vehicle at one moment; it says nothing about how likely it is. Currents come from {@link
 * org.loomwright.core.electrical.simulation.ShortedNet}, heating from {@link org.loomwright.core.electrical.HeatingTime}. No
 * time-current curve of a fuse is at hand: how fast one opens is a setting from memory and always shown as such. May depend on
 * {@code loom}, {@code catalogue} and the other electrical packages. Start with {@link
 * org.loomwright.core.electrical.fault.ShortCircuits}.
 */
@NullMarked
package org.loomwright.core.electrical.fault;

import org.jspecify.annotations.NullMarked;
