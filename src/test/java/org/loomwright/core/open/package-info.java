/** Tests of what is open. */
@NullMarked
package org.loomwright.core.open;

import org.jspecify.annotations.NullMarked;
