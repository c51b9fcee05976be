package org.loomwright.core.loom;

import org.loomwright.core.quantity.Length;

/**
 * A connecting point of a device.
 *
 * @param name unique among the points of the device: the mark on the terminal, or a word
 * @param node where its wires leave the covered loom
 * @param tail bare wire from that node to the terminal's tip
 */
public record Point(String name, String node, Length tail) {}
