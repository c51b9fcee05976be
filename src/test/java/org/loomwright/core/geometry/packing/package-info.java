/**
 * Does the packing hold, and is it tight? Tests of the circle packer.
 *
 * <p>{@code PackingCheck} judges a packing from the radii and centres alone and shares no code with the packer; the
 * reference files under {@code reference/packing} state origin and status. Start with {@code PackingReferenceTest}.
 */
@NullMarked
package org.loomwright.core.geometry.packing;

import org.jspecify.annotations.NullMarked;
