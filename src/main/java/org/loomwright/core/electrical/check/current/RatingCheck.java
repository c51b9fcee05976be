package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.electrical.Derating;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** {@code electrical.current-over-rating}: a wire that carries more than is left of its rating. */
final class RatingCheck {

    private final Compared looms;

    RatingCheck(Compared looms) {
        this.looms = looms;
    }

    List<Problem> find() {
        List<Problem> problems = new ArrayList<>();
        AllowedCurrents wires = looms.now().wires();
        for (int i = 0; i < wires.wires().size(); i++) {
            int wire = i;
            Optional<Observed> worst = looms.now().worst(one -> one.currents().use(wire));
            worst.filter(one -> one.currents().isOver(wire))
                    .ifPresent(one -> problems.add(problem(wire, one)));
        }
        return problems;
    }

    private Problem problem(int index, Observed worst) {
        InScenario currents = worst.currents();
        Wire wire = looms.now().wires().wire(index);
        ConductorSize size = looms.now().wires().size(index);
        Blame blame =
                Blame.of(
                        looms.additions().hasWire(wire.id()),
                        currents.use(index),
                        looms.useBefore(one -> before(one, wire.id()), worst));
        double before = amperesBefore(wire.id());
        if (!Blame.isMore(currents.current(index).toDoubleAmperes(), before)) {
            blame = blame.ofLimitAlone();
        }
        Derating derating = currents.derating(index);
        String text =
                "Wire %s (%s, %s) carries %s in scenario '%s' but may carry %s: %s.%s"
                        .formatted(
                                wire.id(),
                                wire.circuit(),
                                wire.size(),
                                Words.of(currents.current(index)),
                                worst.scenario(),
                                Words.of(currents.allowed(index)),
                                chain(size, derating, currents.loadedWires(index)),
                                blame.words(Words.of(Current.roundedFromAmperes(before))));
        Finding finding =
                new Finding(
                        "electrical.current-over-rating",
                        blame.severity(),
                        Subject.of(ThingKind.WIRE, wire.id()),
                        text);
        return new Problem(
                new ElectricalFinding(
                        finding,
                        worst.scenario(),
                        Words.amperes(currents.current(index)),
                        Words.amperes(currents.allowed(index)),
                        size.ratingProvenance(),
                        Problem.NO_SINGLE_CHANGE),
                cure(index, wire.id(), worst));
    }

    private static double before(Observed recorded, String wire) {
        int index = recorded.currents().find(wire);
        return index < 0 ? 0 : recorded.currents().use(index);
    }

    private double amperesBefore(String wire) {
        return looms.stock()
                .most(
                        one -> {
                            int index = one.currents().find(wire);
                            return index < 0 ? 0 : one.currents().current(index).toDoubleAmperes();
                        });
    }

    /** For example {@code rated 8.75 A (published: T1) x 0.8 for 4 loaded wires or more in the bundle (published: N1)}. */
    private static String chain(ConductorSize size, Derating derating, int loaded) {
        String steps =
                derating.steps().stream()
                        .filter(step -> !step.factor().equals(Ratio.ONE))
                        .map(
                                step ->
                                        " x %s for %s (%s)"
                                                .formatted(
                                                        step.factor(),
                                                        step.reason(),
                                                        Words.of(step.provenance())))
                        .collect(Collectors.joining());
        return "rated %s (%s)%s; loaded wires in its fullest segment: %d"
                .formatted(
                        Words.of(derating.rating()),
                        Words.of(size.ratingProvenance()),
                        steps,
                        loaded);
    }

    private Cure cure(int index, String wire, Observed worst) {
        InScenario currents = worst.currents();
        List<LoadPath> paths =
                worst.paths().stream()
                        .filter(path -> !path.charges() && path.leadsThroughWire(wire))
                        .sorted(newAndLargeFirst(looms.additions()))
                        .toList();
        return new Cure(
                (trial, readings) -> holds(trial, readings, wire),
                broken(index),
                Map.of(
                        wire,
                        size ->
                                currents.allowed(index, size.rating())
                                                .compareTo(currents.current(index))
                                        >= 0),
                edge -> wire.equals(edge.wire()),
                paths);
    }

    private List<Observed> broken(int wire) {
        return looms.now().scenarios().stream()
                .filter(one -> one.currents().isOver(wire))
                .sorted(
                        Comparator.comparingDouble((Observed one) -> one.currents().use(wire))
                                .reversed())
                .toList();
    }

    private static boolean holds(Trial trial, Readings readings, String wire) {
        InScenario after = trial.wires().in(readings);
        int index = after.find(wire);
        return index < 0 || !after.isOver(index);
    }

    /** Additions before what was there, large loads before small ones. */
    static Comparator<LoadPath> newAndLargeFirst(Additions additions) {
        return Comparator.comparing((LoadPath path) -> !additions.hasDevice(path.load().device()))
                .thenComparing(LoadPath::current, Comparator.reverseOrder())
                .thenComparing(LoadPath::key);
    }
}
