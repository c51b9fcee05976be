/**
 * Where do names and measures go, so that none covers another or a line? A {@link
 * org.loomwright.core.layout.label.LabelSpace} knows what is drawn and finds a free place near an anchor, with a leader when it has
 * to go farther. Sheet millimetres. May depend on {@code geometry} and {@code quantity}.
 */
@NullMarked
package org.loomwright.core.layout.label;

import org.jspecify.annotations.NullMarked;
