/** Tests of the words on the sheets. */
@NullMarked
package org.loomwright.document.sheet.content;

import org.jspecify.annotations.NullMarked;
