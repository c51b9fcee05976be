package org.loomwright.core.electrical.fault;

import org.loomwright.core.quantity.Current;

import java.time.Duration;

/**
 * A wire that carries more than its rating during a short.
 *
 * @param wire its id
 * @param current what flows in it
 * @param harmed after which time its metal is as warm as its insulation stands, if no heat gets away
 * @param melts after which time its metal melts, if no heat gets away
 */
public record Heated(String wire, Current current, Duration harmed, Duration melts) {}
