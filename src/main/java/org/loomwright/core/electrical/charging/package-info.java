/**
 * Whether the generator keeps up: what it can give against what everything draws, scenario by scenario, and what the additions did to it.
 *
 * <p>Currents are averages: what works now and then counts with its duty. Losses of the battery in charging are not counted. Duties and
 * the battery's capacity are settings from memory and are shown as such. May depend on {@code loom}, {@code catalogue} and the other
 * electrical packages. Start with {@link org.loomwright.core.electrical.charging.ChargingBalances}.
 */
@NullMarked
package org.loomwright.core.electrical.charging;

import org.jspecify.annotations.NullMarked;
