/** Tests of {@code core.electrical.check.current}. */
@NullMarked
package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.NullMarked;
