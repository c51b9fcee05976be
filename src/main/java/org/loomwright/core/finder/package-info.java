/**
 * Which wire is this? Somebody stands at the vehicle and sees a colour, perhaps faded, a size and a place; {@link
 * org.loomwright.core.finder.WireFinder} answers which wires of the loom it may be, why, where each goes, and what a voltmeter should show
 * on it, switch by switch.
 */
@NullMarked
package org.loomwright.core.finder;

import org.jspecify.annotations.NullMarked;
