@NullMarked
package org.loomwright.core.electrical.structure;

import org.jspecify.annotations.NullMarked;
