/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.core.catalogue;

import org.jspecify.annotations.NullMarked;
