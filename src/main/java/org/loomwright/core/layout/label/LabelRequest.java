package org.loomwright.core.layout.label;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.quantity.Length;

import java.util.List;

/**
 * A label that wants a place.
 *
 * @param anchors what it may point at, the best first; at least one
 * @param towards the direction from the anchor in which it should rather lie, as a vector of any length
 * @param width of the label
 * @param height of the label
 * @param gap between anchor and label when it lies next to it
 * @param foot within this distance of the anchor a leader may lie on what it points at
 */
public record LabelRequest(
        List<Point> anchors, Point towards, Length width, Length height, Length gap, Length foot) {

    public LabelRequest {
        anchors = List.copyOf(anchors);
        if (anchors.isEmpty()) {
            throw new IllegalArgumentException("a label needs an anchor");
        }
    }
}
