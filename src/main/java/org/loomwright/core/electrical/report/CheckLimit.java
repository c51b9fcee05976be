package org.loomwright.core.electrical.report;

import org.loomwright.core.catalogue.Provenance;

/**
 * A limit that a check holds figures against.
 *
 * @param check what is checked, in words
 * @param limit the limit in words, with its unit
 * @param provenance where the limit comes from
 */
public record CheckLimit(String check, String limit, Provenance provenance) {}
