package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.Provenance;

/**
 * A figure with its source.
 *
 * @param value the figure
 * @param provenance where it comes from
 * @param <T> what sort of figure
 */
public record Sourced<T>(T value, Provenance provenance) {}
