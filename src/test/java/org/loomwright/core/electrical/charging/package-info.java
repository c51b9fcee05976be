@NullMarked
package org.loomwright.core.electrical.charging;

import org.jspecify.annotations.NullMarked;
