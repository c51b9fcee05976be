/**
 * How do core's results look on paper and on screen? Shapes to SVG and PDF; no decisions about the loom are taken here. May
 * depend on core and the PDF library.
 */
@NullMarked
package org.loomwright.document;

import org.jspecify.annotations.NullMarked;
