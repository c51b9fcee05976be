/** Does the checker find every fault, and only faults? */
@NullMarked
package org.loomwright.core.loom;

import org.jspecify.annotations.NullMarked;
