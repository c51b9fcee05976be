/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.core.routing;

import org.jspecify.annotations.NullMarked;
