/**
 * How much does a wire resist, drop, carry and stand? The rules of calculation for one conductor: resistance at temperature,
 * voltage drop, what is left of a rating in a warm bundle, at which current a wire melts, what an old fuse's marking means.
 *
 * <p>Every rule names its source. Figures come from {@link org.loomwright.core.catalogue.ElectricalTables}. {@code network}
 * below solves a net of resistors, {@code simulation} makes one of a loom and a scenario. May depend on {@code loom}, {@code
 * catalogue}, {@code routing}, {@code finding} and {@code quantity}. Start with {@link
 * org.loomwright.core.electrical.WireResistance}.
 */
@NullMarked
package org.loomwright.core.electrical;

import org.jspecify.annotations.NullMarked;
