package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.amendment.Origin;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.CurrentChecks.Recorded;
import org.loomwright.core.electrical.check.remedy.Proposal;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.exchange.CurrentRuleFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Looms simulated and checked with the project's own tables and limits. */
final class Checked {

    static final CurrentRules RULES = CurrentRuleFiles.load();

    private static final Catalogue CATALOGUE = TestCatalogue.get();

    private Checked() {}

    /** A device whose points are at one node, with tails of 100 mm. */
    static Device device(
            String id, DeviceKind kind, @Nullable Current load, String node, String... points) {
        return device(id, kind, load, Particulars.NONE, node, points);
    }

    static Device device(
            String id,
            DeviceKind kind,
            @Nullable Current load,
            Particulars particulars,
            String node,
            String... points) {
        List<Point> at =
                Arrays.stream(points)
                        .map(name -> new Point(name, node, Length.ofMillimetres(100)))
                        .toList();
        return new Device(id, kind.words() + " " + id, kind, load, particulars, at);
    }

    static Particulars rated(long amperes) {
        return new Particulars(null, amperes(amperes), null, null, List.of());
    }

    static Particulars fused(FuseStyle style, long amperes) {
        return new Particulars(
                null,
                null,
                null,
                null,
                List.of(new FittedFuse("IN", "OUT", style, amperes(amperes))));
    }

    static Current amperes(long amperes) {
        return Current.ofMilliamperes(amperes * 1_000);
    }

    static Wire wire(String id, String size, String a, String b) {
        return new Wire(
                id,
                "circuit of " + id,
                WireColour.parse("N"),
                size,
                LoomSketch.end(a),
                LoomSketch.end(b),
                Condition.GOOD);
    }

    static ElectricalFinding only(List<ElectricalFinding> findings, String code) {
        List<ElectricalFinding> found = of(findings, code);
        if (found.size() != 1) {
            throw new AssertionError("expected one " + code + " in " + findings);
        }
        return found.getFirst();
    }

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
        return simulation(loom, ElectricalSettings.USUAL);
    }

    static Simulation simulation(Loom loom, ElectricalSettings settings) {
        return new Simulation(
                loom,
                CATALOGUE,
                TestCatalogue.electrical(),
                ElectricalFiles.behaviours(),
                settings,
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

    /** Loads that are on, by device and points. */
    static Set<String> lit(Loom loom, Scenario scenario) {
        return readings(loom, List.of(scenario)).stream()
                .flatMap(readings -> readings.of(Element.LOAD).stream())
                .filter(reading -> Math.abs(reading.current().milliamperes()) > 5)
                .map(reading -> reading.device() + " " + reading.from())
                .collect(Collectors.toSet());
    }

    static List<ElectricalFinding> of(List<ElectricalFinding> findings, String code) {
        return findings.stream().filter(one -> one.finding().code().equals(code)).toList();
    }

    static IllegalStateException refusal(List<Finding> reasons) {
        return new IllegalStateException(reasons.toString());
    }
}
