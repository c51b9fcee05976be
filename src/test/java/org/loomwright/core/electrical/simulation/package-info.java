@NullMarked
package org.loomwright.core.electrical.simulation;

import org.jspecify.annotations.NullMarked;
