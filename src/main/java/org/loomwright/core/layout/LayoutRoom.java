package org.loomwright.core.layout;

import org.loomwright.core.quantity.Length;

/**
 * The room for a drawing.
 *
 * @param width room from left to right
 * @param height room from top to bottom
 * @param clearance how far branches are to stay apart on the sheet
 */
public record LayoutRoom(Length width, Length height, Length clearance) {

    public LayoutRoom {
        if (!width.isPositive() || !height.isPositive() || !clearance.isPositive()) {
            throw new IllegalArgumentException(
                    "room and clearance must be positive: %s x %s, %s"
                            .formatted(width, height, clearance));
        }
    }
}
