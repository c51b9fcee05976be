@NullMarked
package org.loomwright.core.electrical.report;

import org.jspecify.annotations.NullMarked;
