/**
 * What did we find wrong, in which thing, and how bad is it? One fact is a {@link
 * org.loomwright.core.finding.Finding}; an {@link org.loomwright.core.finding.Outcome} is either a value or all the
 * reasons why there is none.
 *
 * <p>Wrong data is never an exception. May depend on {@code quantity}.
 */
@NullMarked
package org.loomwright.core.finding;

import org.jspecify.annotations.NullMarked;
