package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.simulation.Settling.Settled;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What a solution says about itself. */
final class SolutionChecks {

    private SolutionChecks() {}

    static List<Finding> of(Scenario scenario, Settled settled) {
        List<Finding> findings = new ArrayList<>();
        if (!settled.restless().isEmpty()) {
            findings.add(
                    Finding.fault(
                            "electrical.never-at-rest",
                            Subject.of(ThingKind.DEVICE, settled.restless().getFirst()),
                            "In scenario '%s' %s never comes to rest: what it switches cuts it off again. The figures are of one moment."
                                    .formatted(
                                            scenario.name(),
                                            String.join(", ", settled.restless()))));
        }
        if (!settled.solution().undetermined().isEmpty()) {
            findings.add(
                    Finding.note(
                            "electrical.current-undetermined",
                            Subject.of(ThingKind.LOOM, ""),
                            "In scenario '%s' connections without resistance lie side by side (%s); how they share a current is not determined."
                                    .formatted(
                                            scenario.name(),
                                            String.join(
                                                    ", ",
                                                    new TreeSet<>(
                                                            settled.solution().undetermined())))));
        }
        if (!settled.solution().isExact()) {
            findings.add(
                    Finding.warning(
                            "electrical.not-exact",
                            Subject.of(ThingKind.LOOM, ""),
                            "In scenario '%s' the currents at a joint do not add up to nothing as closely as they should; resistances differ too much."
                                    .formatted(scenario.name())));
        }
        return findings;
    }
}
