@NullMarked
package org.loomwright.core.electrical.joining;

import org.jspecify.annotations.NullMarked;
