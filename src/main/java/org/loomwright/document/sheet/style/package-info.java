/**
 * How does a job sheet look? Its few sizes of type, the cells that come again and again, and the numbers of its sections.
 *
 * <p>May depend on core and {@code document.pdf}.
 */
@NullMarked
package org.loomwright.document.sheet.style;

import org.jspecify.annotations.NullMarked;
