/**
 * What current flows in every branch of a net of resistors and sources, and which voltage has every node? Nothing here knows of
 * looms.
 *
 * <p>A {@link org.loomwright.core.electrical.network.Branch} has a resistance and may have an electromotive force; nodes are names.
 * Values come in and go out as quantities; in between, volts, amperes and siemens are {@code double}. The linear algebra is done
 * behind {@link org.loomwright.core.electrical.network.LinearSolver}. May depend on {@code quantity}. Start with {@link
 * org.loomwright.core.electrical.network.Network}.
 */
@NullMarked
package org.loomwright.core.electrical.network;

import org.jspecify.annotations.NullMarked;
