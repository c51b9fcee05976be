package org.loomwright.core.loom;

/**
 * How a leg leaves its breakout, looking away from the datum.
 *
 * @param clock clock position round the trunk, 1 to 12
 * @param angleDegrees angle between the leg and the trunk's onward direction, 0 to 180 degrees
 */
public record Departure(int clock, int angleDegrees) {}
