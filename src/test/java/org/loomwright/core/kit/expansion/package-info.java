@NullMarked
package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.NullMarked;
