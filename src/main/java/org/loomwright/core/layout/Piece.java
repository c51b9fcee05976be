package org.loomwright.core.layout;

import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;

/**
 * A straight piece of a leg on the sheet.
 *
 * @param line where it lies, from the datum outward
 * @param leg number of the leg
 * @param depthMm distance on the sheet, along the loom, from the datum to the piece's first point
 * @param bounds the rectangle round it
 */
record Piece(Straight line, int leg, double depthMm, Rectangle bounds) {

    Piece(Straight line, int leg, double depthMm) {
        this(line, leg, depthMm, Rectangle.around(line.from(), line.to()));
    }

    double endDepthMm() {
        return depthMm + line.lengthMm();
    }
}
