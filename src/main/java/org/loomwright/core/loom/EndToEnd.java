package org.loomwright.core.loom;

import org.loomwright.core.quantity.Length;

/**
 * A length measured in one go from one node to another, to check the sum of the segments between them.
 *
 * @param id unique among the checks of the loom
 * @param from a node
 * @param to another node
 * @param measured along the centre line
 */
public record EndToEnd(String id, String from, String to, Length measured) {}
