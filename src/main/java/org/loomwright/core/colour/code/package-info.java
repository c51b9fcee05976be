/**
 * What does a colour mean? The colour code as data with its sources: which body colour belongs to which supply, what a body with a
 * tracer is there for, which colours are taken for one another. Start with {@link org.loomwright.core.colour.code.ColourCode}.
 */
@NullMarked
package org.loomwright.core.colour.code;

import org.jspecify.annotations.NullMarked;
