package org.loomwright.core.electrical.check.current;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.amendment.Origin;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.CurrentChecks.Recorded;
import org.loomwright.core.electrical.check.remedy.Proposal;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Loom;
import org.loomwright.exchange.CurrentRuleFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Looms simulated and checked with the project's own tables and limits. */
final class Checked {

    static final CurrentRules RULES = CurrentRuleFiles.load();

    private static final Catalogue CATALOGUE = TestCatalogue.get();

    private Checked() {}

    static CurrentChecks checks(Loom loom) {
        return checks(loom, RULES);
    }

    static CurrentChecks checks(Loom loom, CurrentRules rules) {
        return new CurrentChecks(
                loom,
                CATALOGUE,
                TestCatalogue.electrical(),
                Tracing.of(loom, CATALOGUE, ElectricalFiles.behaviours()),
                rules);
    }

    static Simulation simulation(Loom loom) {
        return new Simulation(
                loom,
                CATALOGUE,
                TestCatalogue.electrical(),
                ElectricalFiles.behaviours(),
                ElectricalSettings.USUAL,
                new SparseCholesky());
    }

    /** The scenarios that the loom can be in. */
    static List<Readings> readings(Loom loom, List<Scenario> scenarios) {
        Simulation simulation = simulation(loom);
        return scenarios.stream()
                .map(simulation::run)
                .filter(Outcome.Accepted.class::isInstance)
                .map(outcome -> outcome.orElseThrow(Checked::refusal))
                .toList();
    }

    /** The loom as it was recorded. */
    static List<ElectricalFinding> find(Loom loom, Scenario... scenarios) {
        return checks(loom).find(readings(loom, List.of(scenarios)), null, Additions.NONE);
    }

    static AllowedCurrents allowed(Loom loom) {
        return new AllowedCurrents(loom, CATALOGUE, TestCatalogue.electrical(), RULES);
    }

    static List<CheckedFinding> findWithChanges(
            AmendedLoom amended, Loom recorded, List<Scenario> scenarios) {
        Loom loom = amended.loom();
        return checks(loom)
                .findWithChanges(
                        readings(loom, scenarios),
                        new Recorded(recorded, readings(recorded, scenarios)),
                        additions(amended),
                        Checked::simulation);
    }

    /** New is what was added; of the recorded wires those that were put in the place of others. */
    static Additions additions(AmendedLoom amended) {
        return new Additions(
                amended.loom().wires().values().stream()
                        .filter(
                                wire ->
                                        isAdded(amended, ThingKind.WIRE, wire.id())
                                                || wire.condition() == Condition.NEW
                                                        && isChanged(amended, wire.id()))
                        .map(wire -> wire.id())
                        .collect(Collectors.toSet()),
                amended.loom().devices().keySet().stream()
                        .filter(id -> isAdded(amended, ThingKind.DEVICE, id))
                        .collect(Collectors.toSet()));
    }

    private static boolean isAdded(AmendedLoom amended, ThingKind kind, String id) {
        return amended.origin(kind, id) instanceof Origin.ByAmendment by
                && by.act() == Origin.Act.ADDED;
    }

    private static boolean isChanged(AmendedLoom amended, String wire) {
        return amended.origin(ThingKind.WIRE, wire) instanceof Origin.ByAmendment;
    }

    static Loom with(Loom loom, Proposal proposal) {
        return Amendments.apply(loom, proposal.amendments(), CATALOGUE)
                .orElseThrow(Checked::refusal)
                .loom();
    }

    static Set<String> codes(List<ElectricalFinding> findings) {
        return findings.stream().map(one -> one.finding().code()).collect(Collectors.toSet());
    }

    static List<ElectricalFinding> of(List<ElectricalFinding> findings, String code) {
        return findings.stream().filter(one -> one.finding().code().equals(code)).toList();
    }

    static IllegalStateException refusal(List<Finding> reasons) {
        return new IllegalStateException(reasons.toString());
    }
}
