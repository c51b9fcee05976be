/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.core.analysis;

import org.jspecify.annotations.NullMarked;
