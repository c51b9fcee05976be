/**
 * In what do two looms differ? {@link org.loomwright.core.difference.LoomDifference} compares any two, whether or not one came
 * out of the other by amendments, part by part and field by field, in words with units. Start there.
 *
 * <p>May depend on {@code loom}, {@code catalogue}, {@code finding} and {@code quantity}.
 */
@NullMarked
package org.loomwright.core.difference;

import org.jspecify.annotations.NullMarked;
