/**
 * What does the customer want changed, and what is the loom then? {@link org.loomwright.core.amendment.Amendment} is the sealed
 * set of changes; applying an ordered list to a loom is pure and gives either the amended loom, with the origin of every part, or
 * all the reasons why not. The difference between any two looms is described here too.
 *
 * <p>May depend on {@code loom}, {@code catalogue}, {@code finding} and {@code quantity}.
 */
@NullMarked
package org.loomwright.core.amendment;

import org.jspecify.annotations.NullMarked;
