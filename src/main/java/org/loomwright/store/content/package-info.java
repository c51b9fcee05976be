/**
 * How does a loom's content go into rows and come back the same? Written once per hash, in whole tables at a time, and read in any
 * order.
 *
 * <p>Plain SQL, because content is never changed and may have ten thousand wires. Lengths are micrometres, currents milliamperes,
 * voltages millivolts; words of enums are lower-case with dashes. Start with {@link org.loomwright.store.content.ContentTables}.
 */
@NullMarked
package org.loomwright.store.content;

import org.jspecify.annotations.NullMarked;
