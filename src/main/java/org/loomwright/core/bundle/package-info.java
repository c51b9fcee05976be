/**
 * How many wires run through each segment, and how thick is it? Counts by colour and size, the tight, laid and covered diameter,
 * the cross-section as packed, and whether openings still let it pass.
 *
 * <p>Tight is the smallest circle found round the wires; laid is what a real bundle measures; covered includes the covering. May
 * depend on {@code geometry}, {@code loom}, {@code catalogue}, {@code routing}, {@code finding} and {@code quantity}. Start with
 * {@link org.loomwright.core.bundle.SegmentBundles}.
 */
@NullMarked
package org.loomwright.core.bundle;

import org.jspecify.annotations.NullMarked;
