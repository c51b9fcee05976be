/**
 * How does the loom lie on a flat sheet or board? The tree drawn to true proportions: every segment as long as recorded times one
 * scale, no two branches touching, inside a given room.
 *
 * <p>Vocabulary: a <i>leg</i> is a drawn segment; a <i>spine</i> a run of legs that is drawn straight where it can be; the
 * <i>trunk</i> the spine through the datum. Sheet millimetres, x to the right, y down, origin at the top left of the drawing.
 * May depend on {@code geometry}, {@code quantity}, {@code loom} and {@code bundle}. Start with {@link
 * org.loomwright.core.layout.LoomLayouter}; names and measures find their places in {@code layout.label}.
 */
@NullMarked
package org.loomwright.core.layout;

import org.jspecify.annotations.NullMarked;
