/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.core.bundle;

import org.jspecify.annotations.NullMarked;
