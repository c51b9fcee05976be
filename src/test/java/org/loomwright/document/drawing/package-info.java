/** Tests of the drawings. */
@NullMarked
package org.loomwright.document.drawing;

import org.jspecify.annotations.NullMarked;
