/** Tests of {@code store} on a real PostgreSQL. */
@NullMarked
package org.loomwright.store;

import org.jspecify.annotations.NullMarked;
