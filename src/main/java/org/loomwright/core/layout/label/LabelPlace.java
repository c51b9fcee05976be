package org.loomwright.core.layout.label;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;

/**
 * A place for a label.
 *
 * @param box where it lies
 * @param anchor what it points at
 * @param leader line from the anchor to the box, null when the label lies next to its anchor
 */
public record LabelPlace(Rectangle box, Point anchor, @Nullable Straight leader) {}
