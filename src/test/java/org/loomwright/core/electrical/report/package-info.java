/** Tests of the report that gathers every electrical check. */
@NullMarked
package org.loomwright.core.electrical.report;

import org.jspecify.annotations.NullMarked;
