@NullMarked
package org.loomwright.core.electrical;

import org.jspecify.annotations.NullMarked;
