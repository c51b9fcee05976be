/** Tests of the package of the same name. */
@NullMarked
package org.loomwright.core.workorder;

import org.jspecify.annotations.NullMarked;
