/** Tests of the SVG writer. */
@NullMarked
package org.loomwright.document.svg;

import org.jspecify.annotations.NullMarked;
