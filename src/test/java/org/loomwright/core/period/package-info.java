/** Tests of what is of the period. */
@NullMarked
package org.loomwright.core.period;

import org.jspecify.annotations.NullMarked;
