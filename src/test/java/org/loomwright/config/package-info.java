/** Tests of {@code config} on a real PostgreSQL. */
@NullMarked
package org.loomwright.config;

import org.jspecify.annotations.NullMarked;
