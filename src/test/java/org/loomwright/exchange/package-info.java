/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.exchange;

import org.jspecify.annotations.NullMarked;
