/**
 * Which way does a wire run, and how long must it be cut? Paths through the tree by lowest common ancestor, cut lengths with every
 * allowance itemised, and whether end-to-end measurements agree with the segments between them.
 *
 * <p>Routes are unique because a loom is a tree. May depend on {@code loom}, {@code catalogue}, {@code finding} and {@code
 * quantity}. Start with {@link org.loomwright.core.routing.Routes}.
 */
@NullMarked
package org.loomwright.core.routing;

import org.jspecify.annotations.NullMarked;
