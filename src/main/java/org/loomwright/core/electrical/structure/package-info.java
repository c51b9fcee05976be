/**
 * Whether a loom is put together so that it can work: every load has a feed and a return, no end hangs loose, additions are fed from the
 * right side of their switch, points and earth screws have room, devices suit the vehicle's earth and voltage.
 *
 * <p>Nothing is simulated here; {@link org.loomwright.core.electrical.tracing.Tracing} says how everything is joined. What was recorded is
 * told as original, not accused. Limits from memory are settings and are shown as such. May depend on {@code loom}, {@code catalogue}
 * and the other electrical packages. Start with {@link org.loomwright.core.electrical.structure.StructureChecks}.
 */
@NullMarked
package org.loomwright.core.electrical.structure;

import org.jspecify.annotations.NullMarked;
