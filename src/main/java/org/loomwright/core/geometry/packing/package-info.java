/**
 * What is the smallest circle that holds these circles without overlap, and where do they lie in it?
 *
 * <p>Vocabulary: the <i>container</i> is the circle around, its inside the <i>wall</i>; a <i>start</i> is a first
 * arrangement; <i>relaxing</i> presses soft circles together until their forces balance; <i>settling</i> takes the
 * pressure away; a <i>hop</i> disturbs an arrangement and relaxes it again. Millimetres at the public edge, inside the
 * median radius is 1. May depend on {@code core.geometry}. Start with {@link
 * org.loomwright.core.geometry.packing.CirclePacker}, then {@code Search}.
 */
@NullMarked
package org.loomwright.core.geometry.packing;

import org.jspecify.annotations.NullMarked;
