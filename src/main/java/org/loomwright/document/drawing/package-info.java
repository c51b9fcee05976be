/**
 * What does a loom look like on paper? Scenes of the whole loom and of the cross-section of one segment. Start with {@link
 * org.loomwright.document.drawing.LoomDrawing} and {@link org.loomwright.document.drawing.CrossSectionDrawing}.
 */
@NullMarked
package org.loomwright.document.drawing;

import org.jspecify.annotations.NullMarked;
