/** Does the text wrap, do tables keep their rows, are the pictures to scale, are the bytes the same every time? */
@NullMarked
package org.loomwright.document.pdf;

import org.jspecify.annotations.NullMarked;
