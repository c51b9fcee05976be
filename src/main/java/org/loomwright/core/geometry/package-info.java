/**
 * Where is it, and does it touch? Points and circles of the plane and the one tolerance policy.
 *
 * <p>Vocabulary: the <i>overlap</i> of two circles is how deep they penetrate each other, the <i>escape</i> of an inner
 * circle how far it sticks out. Everything is a {@code double} in millimetres and says so in its name; callers convert
 * to stored lengths at their edge, once. May depend on nothing but {@code java}. Start with {@link
 * org.loomwright.core.geometry.Tolerance}; packing circles into a circle is {@code geometry.packing}.
 */
@NullMarked
package org.loomwright.core.geometry;

import org.jspecify.annotations.NullMarked;
