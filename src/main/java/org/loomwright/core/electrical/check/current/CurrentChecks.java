package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.WireResistance;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.remedy.Proposal;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Loom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Everything that follows from the currents of a loom in its scenarios: wires over their rating, voltage lost on the way, fuses that do
 * not fit wires or loads, wires without a fuse, contacts and meters that carry too much. For each thing and rule there is one finding, of
 * the scenario in which it is worst. Findings tell; they clear nothing.
 *
 * <p>Cost: routes are walked once for a loom; a scenario costs about its net plus the ways of its loads. Immutable and thread-safe.
 */
public final class CurrentChecks {

    private final Loom loom;
    private final Catalogue catalogue;
    private final ElectricalTables tables;
    private final Tracing tracing;
    private final CurrentRules rules;
    private final AllowedCurrents wires;

    /**
     * The recorded loom and what was simulated of it.
     *
     * @param loom the recorded loom
     * @param readings the same scenarios where it can be in them
     */
    public record Recorded(Loom loom, List<Readings> readings) {

        public Recorded {
            readings = List.copyOf(readings);
        }
    }

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     * @param tables what the tables say about current
     * @param tracing of that loom
     * @param rules the limits
     */
    public CurrentChecks(
            Loom loom,
            Catalogue catalogue,
            ElectricalTables tables,
            Tracing tracing,
            CurrentRules rules) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.tables = tables;
        this.tracing = tracing;
        this.rules = rules;
        this.wires = allowed(loom);
    }

    private AllowedCurrents allowed(Loom any) {
        return new AllowedCurrents(any, catalogue, tables, rules);
    }

    /**
     * Without looking for the cheapest change; remedies are general.
     *
     * @param readings the loom in every scenario
     * @param recorded the recorded loom, or null where the loom is the recorded one or nobody simulated that
     * @param additions what is new in the loom
     * @return what was found, the worst first
     */
    public List<ElectricalFinding> find(
            List<Readings> readings, @Nullable Recorded recorded, Additions additions) {
        return problems(compared(readings, recorded, additions)).stream()
                .map(Problem::unsought)
                .toList();
    }

    /**
     * With the cheapest change for each figure that breaks its limit, as far as one is found.
     *
     * @param readings the loom in every scenario
     * @param recorded the recorded loom, or null where the loom is the recorded one or nobody simulated that
     * @param additions what is new in the loom
     * @param simulate how a changed loom is simulated
     * @return what was found, the worst first
     */
    public List<CheckedFinding> findWithChanges(
            List<Readings> readings,
            @Nullable Recorded recorded,
            Additions additions,
            Function<Loom, Simulation> simulate) {
        Compared looms = compared(readings, recorded, additions);
        CheapestChange cheapest =
                new CheapestChange(looms, catalogue, tables, rules, this::allowed, simulate);
        return problems(looms).stream().map(problem -> checked(problem, cheapest)).toList();
    }

    private static CheckedFinding checked(Problem problem, CheapestChange cheapest) {
        ElectricalFinding finding = problem.finding();
        Optional<Proposal> change =
                Optional.ofNullable(problem.change())
                        .or(() -> Optional.ofNullable(problem.cure()).flatMap(cheapest::of));
        return new CheckedFinding(
                change.map(proposal -> withRemedy(finding, proposal.text())).orElse(finding),
                change);
    }

    private static ElectricalFinding withRemedy(ElectricalFinding finding, String remedy) {
        return new ElectricalFinding(
                finding.finding(),
                finding.scenario(),
                finding.figure(),
                finding.limit(),
                finding.source(),
                remedy);
    }

    private Compared compared(
            List<Readings> readings, @Nullable Recorded recorded, Additions additions) {
        return new Compared(
                Observations.of(loom, wires, readings),
                recorded == null
                        ? null
                        : Observations.of(
                                recorded.loom(), allowed(recorded.loom()), recorded.readings()),
                additions);
    }

    private List<Problem> problems(Compared looms) {
        List<FuseUnit> fuses = FuseUnit.of(loom, tracing, tables, looms.now().scenarios());
        List<Problem> problems = new ArrayList<>();
        problems.addAll(new RatingCheck(looms).find());
        problems.addAll(new DropCheck(looms, catalogue, rules, new WireResistance(tables)).find());
        FuseAdvice advice = new FuseAdvice(tables, rules.fuseLoad().value());
        problems.addAll(new FuseCheck(looms, rules, advice, fuses).find());
        problems.addAll(new UnfusedCheck(looms, tracing, rules, fuses).find());
        problems.addAll(new ContactCheck(looms, rules).find());
        problems.sort(Comparator.comparing(Problem::finding, ElectricalFinding.WORST_FIRST));
        return problems;
    }
}
