/**
 * How far does what was added look and work as it would have done when the vehicle was new, and what takes it back to stock? Start with
 * {@link org.loomwright.core.period.PeriodCheck}.
 *
 * <p>What the recorded loom itself shows goes before the table of period parts ({@link org.loomwright.core.period.PeriodTables}), whose
 * years are rough. Judgements are about looks and age only, never about safety: a deviation may well be the safer way.
 */
@NullMarked
package org.loomwright.core.period;

import org.jspecify.annotations.NullMarked;
