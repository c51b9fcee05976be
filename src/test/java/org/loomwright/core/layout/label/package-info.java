/** Tests of where labels find their places. */
@NullMarked
package org.loomwright.core.layout.label;

import org.jspecify.annotations.NullMarked;
