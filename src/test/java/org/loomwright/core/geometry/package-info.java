/** Tests of points, circles and the tolerance policy. Millimetres. */
@NullMarked
package org.loomwright.core.geometry;

import org.jspecify.annotations.NullMarked;
