@NullMarked
package org.loomwright.core.electrical.network;

import org.jspecify.annotations.NullMarked;
