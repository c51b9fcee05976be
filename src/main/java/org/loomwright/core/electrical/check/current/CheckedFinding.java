package org.loomwright.core.electrical.check.current;

import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.remedy.Proposal;

import java.util.Optional;

/**
 * A finding with the cheapest single change that was found to bring its figure within the limit.
 *
 * @param finding the finding, its remedy filled
 * @param change the change, if one was found; the simulation of the changed loom confirms it in every scenario in which the limit is
 *     broken
 */
public record CheckedFinding(ElectricalFinding finding, Optional<Proposal> change) {}
