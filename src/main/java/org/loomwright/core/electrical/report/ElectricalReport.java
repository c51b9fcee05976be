package org.loomwright.core.electrical.report;

import org.loomwright.core.electrical.check.current.CheckedFinding;
import org.loomwright.core.electrical.fault.FuseLoss;
import org.loomwright.core.electrical.fault.ShortCircuit;
import org.loomwright.core.finding.Finding;

import java.math.BigDecimal;
import java.util.List;

/**
 * The electrical side of one loom and its additions. Estimates for planning; no finding is not a clearance.
 *
 * @param scenarios every state of the vehicle that was looked at
 * @param ampereHoursPerDay what the battery takes in the day that the scenarios divide, negative where it gives
 * @param findings what was found, the worst first, with what would put it right
 * @param wires the most that every wire carries, in the order of their ids
 * @param shorts a dead short on every wire on which one is possible
 * @param losses what goes dark with each fuse
 */
public record ElectricalReport(
        List<ScenarioFigures> scenarios,
        BigDecimal ampereHoursPerDay,
        List<CheckedFinding> findings,
        List<WireFigures> wires,
        List<ShortCircuit> shorts,
        List<FuseLoss> losses) {

    public ElectricalReport {
        scenarios = List.copyOf(scenarios);
        findings = List.copyOf(findings);
        wires = List.copyOf(wires);
        shorts = List.copyOf(shorts);
        losses = List.copyOf(losses);
    }

    /** @return the findings without their figures */
    public List<Finding> plainFindings() {
        return findings.stream().map(checked -> checked.finding().finding()).toList();
    }
}
