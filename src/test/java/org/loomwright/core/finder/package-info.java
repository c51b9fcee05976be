/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.core.finder;

import org.jspecify.annotations.NullMarked;
