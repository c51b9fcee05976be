/**
 * One picture, whatever it is written to: shapes in millimetres on a sheet whose origin is the top left corner, x to the right, y
 * down. Every writer draws the shapes in their order. Start with {@link org.loomwright.document.scene.Scene}.
 */
@NullMarked
package org.loomwright.document.scene;

import org.jspecify.annotations.NullMarked;
