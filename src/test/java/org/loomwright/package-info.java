/** The rules of the architecture, as tests. */
@NullMarked
package org.loomwright;

import org.jspecify.annotations.NullMarked;
