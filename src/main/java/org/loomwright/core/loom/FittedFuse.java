package org.loomwright.core.loom;

import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.quantity.Current;

/**
 * A fuse that is fitted between two points of a fuse box or a fuse holder.
 *
 * @param from one point of the device
 * @param to another point of the device
 * @param style its build, which says what its marking means
 * @param marked the figure on it, more than 0 A
 */
public record FittedFuse(String from, String to, FuseStyle style, Current marked) {}
