@NullMarked
package org.loomwright.core.electrical.fault;

import org.jspecify.annotations.NullMarked;
