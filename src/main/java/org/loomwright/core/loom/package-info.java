/**
 * What is the loom? {@link org.loomwright.core.loom.LoomDocument} is what somebody wrote down and may be wrong; {@link
 * org.loomwright.core.loom.LoomChecker} is the one place that proves it to be a tree with every wire on existing points;
 * {@link org.loomwright.core.loom.Loom} is the proven tree, with its parts by id and in walking order.
 *
 * <p>A loom is measured from a datum node. Every segment runs from its end nearer the datum to the farther one, so a
 * distance along it means the same to everybody. May depend on {@code catalogue}, {@code finding} and {@code quantity}.
 */
@NullMarked
package org.loomwright.core.loom;

import org.jspecify.annotations.NullMarked;
