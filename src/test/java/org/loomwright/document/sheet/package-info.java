/** Is the job sheet complete, readable and the same every time? The jobs in {@code TestJobs} are invented. */
@NullMarked
package org.loomwright.document.sheet;

import org.jspecify.annotations.NullMarked;
