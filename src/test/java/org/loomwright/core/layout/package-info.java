/** Tests of the flat drawing's geometry. */
@NullMarked
package org.loomwright.core.layout;

import org.jspecify.annotations.NullMarked;
