/** Tests of tracing. */
@NullMarked
package org.loomwright.core.electrical.tracing;

import org.jspecify.annotations.NullMarked;
