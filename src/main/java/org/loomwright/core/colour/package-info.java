/**
 * Which colour should a wire have, and does the colour that it has agree with its circuit? Proposes codes, finds colours that contradict
 * their traced feed or function, and wires of one colour that could be mixed up where they leave the loom. Start with {@link
 * org.loomwright.core.colour.ColourAudit} and {@link org.loomwright.core.colour.ColourProposals}.
 */
@NullMarked
package org.loomwright.core.colour;

import org.jspecify.annotations.NullMarked;
