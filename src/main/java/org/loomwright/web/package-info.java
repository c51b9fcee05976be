/**
 * What does a person see? Server-rendered pages. May depend on {@code app}, core's values and {@code document}; never on {@code
 * api} or {@code store}.
 */
@NullMarked
package org.loomwright.web;

import org.jspecify.annotations.NullMarked;
