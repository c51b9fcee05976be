/**
 * What is the net of a vehicle whose looms are recorded one by one? A thing that a loom reaches through another one stands in both
 * documents under one id; where both have a wire to it the two meet in a connector. Start with {@link
 * org.loomwright.core.electrical.joining.JoinedLooms}.
 */
@NullMarked
package org.loomwright.core.electrical.joining;

import org.jspecify.annotations.NullMarked;
