/**
 * What does the customer want changed, and what is the loom then? {@link org.loomwright.core.amendment.Amendment} is the sealed
 * set of changes; applying an ordered list to a loom is pure and gives either the amended loom, with the origin of every part, or
 * all the reasons why not. Start at {@link org.loomwright.core.amendment.Amendments}; the finer rules stand there. In what any two
 * looms differ is the question of {@code core.difference}.
 *
 * <p>May depend on {@code loom}, {@code catalogue}, {@code finding} and {@code quantity}.
 */
@NullMarked
package org.loomwright.core.amendment;

import org.jspecify.annotations.NullMarked;
