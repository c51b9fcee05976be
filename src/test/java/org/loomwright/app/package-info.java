/** Tests of use cases that need no store. */
@NullMarked
package org.loomwright.app;

import org.jspecify.annotations.NullMarked;
