/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.core.colour.code;

import org.jspecify.annotations.NullMarked;
