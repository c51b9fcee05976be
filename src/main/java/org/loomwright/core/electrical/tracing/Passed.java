package org.loomwright.core.electrical.tracing;

import org.loomwright.core.electrical.simulation.Element;

/**
 * Something inside a device that the way from the source leads through.
 *
 * @param device id of the device
 * @param from point where the way enters
 * @param to point where it leaves, or {@code body}
 * @param element what it leads through
 */
public record Passed(String device, String from, String to, Element element) {}
