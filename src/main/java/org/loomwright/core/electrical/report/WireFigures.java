package org.loomwright.core.electrical.report;

import org.loomwright.core.quantity.Current;

/**
 * The most that a wire carries in any of the scenarios.
 *
 * @param wire its id
 * @param current the current, without direction
 * @param scenario name of the scenario; empty where it carries nothing in any
 */
public record WireFigures(String wire, Current current, String scenario) {}
