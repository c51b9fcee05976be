/**
 * How much is it, and in which unit? Immutable values for length, area, current, voltage, resistance, power,
 * temperature and plain ratios.
 *
 * <p>Every value is one whole number of its finest unit in a {@code long}: adding is exact and overflow throws. Factories
 * and accessors name the unit. May depend on nothing but {@code java}. Start with {@link
 * org.loomwright.core.quantity.Length}.
 */
@NullMarked
package org.loomwright.core.quantity;

import org.jspecify.annotations.NullMarked;
