/** Loomwright: the start of the program. Look in {@code core} for what it computes and in {@code app} for what it does. */
@NullMarked
package org.loomwright;

import org.jspecify.annotations.NullMarked;
