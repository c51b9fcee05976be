/** Are quantities exact, and do they say so when they cannot be? */
@NullMarked
package org.loomwright.core.quantity;

import org.jspecify.annotations.NullMarked;
