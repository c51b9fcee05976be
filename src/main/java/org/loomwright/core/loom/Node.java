package org.loomwright.core.loom;

/**
 * A breakout or an end of the covered loom. It is an end when one segment meets it, a breakout when more do.
 *
 * @param id unique among the nodes of the loom
 * @param name what a person calls it, for example {@code nearside headlamp breakout}
 */
public record Node(String id, String name) {}
