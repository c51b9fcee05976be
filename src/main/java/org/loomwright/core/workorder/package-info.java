/**
 * Where does a job stand, and where may it go from there? The statuses of a work order with their one table of allowed moves, and
 * the record of each move.
 *
 * <p>May depend on {@code finding} and {@code quantity}. Start with {@link org.loomwright.core.workorder.WorkOrderStatus}.
 */
@NullMarked
package org.loomwright.core.workorder;

import org.jspecify.annotations.NullMarked;
