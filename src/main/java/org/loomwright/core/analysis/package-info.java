/**
 * What does all that mean for this loom, and what do the additions change? One {@link org.loomwright.core.analysis.LoomAnalysis}
 * for any loom; one {@link org.loomwright.core.analysis.ChangeAnalysis} for a stock loom beside the amended one.
 *
 * <p>Pure and deterministic. May depend on all core packages below it: {@code loom}, {@code amendment}, {@code catalogue}, {@code
 * routing}, {@code bundle}, {@code finding} and {@code quantity}.
 */
@NullMarked
package org.loomwright.core.analysis;

import org.jspecify.annotations.NullMarked;
