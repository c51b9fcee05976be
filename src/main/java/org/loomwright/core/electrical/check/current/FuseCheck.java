package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Current;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * {@code electrical.fuse-over-wire}: a fuse that carries for ever more than the weakest live wire behind it may; {@code
 * electrical.fuse-under-load}: a fuse that its loads ask too much of; {@code electrical.fuse-marking}: what the figure on an old glass
 * fuse means, where that matters; {@code electrical.fuse-unknown}.
 *
 * <p>Source: a fuse must not carry more than the cable behind it (general practice; published pages say that an oversize fuse
 * lets the wire go on heating). A wire that is strong enough by itself and too weak only in its full bundle is told one step milder: all
 * those wires are seldom loaded long enough together. Wires behind a load are not counted: the load limits what a fault there can draw.
 */
final class FuseCheck {

    private final Compared looms;
    private final CurrentRules rules;
    private final FuseAdvice advice;
    private final List<FuseUnit> units;

    FuseCheck(Compared looms, CurrentRules rules, FuseAdvice advice, List<FuseUnit> units) {
        this.looms = looms;
        this.rules = rules;
        this.advice = advice;
        this.units = units;
    }

    /**
     * A wire where it may carry least.
     *
     * @param allowed what it may carry there
     * @param alone what it might carry there with no other wire beside it
     */
    private record Weakest(
            String wire, int index, Current allowed, Current alone, Observed where) {}

    List<Problem> find() {
        List<Problem> problems = new ArrayList<>();
        for (FuseUnit unit : units) {
            FuseRating fuse = unit.fuse();
            if (fuse == null) {
                problems.add(unknown(unit));
            } else {
                judge(unit, fuse, problems);
            }
        }
        return problems;
    }

    private void judge(FuseUnit unit, FuseRating fuse, List<Problem> problems) {
        int before = problems.size();
        Optional<Weakest> anyWire = weakest(unit, false, Weakest::allowed);
        Optional<Weakest> told = told(unit, fuse);
        told.ifPresent(
                wire -> problems.add(overWire(unit, fuse, wire, anyWire.orElse(wire).allowed())));
        underLoad(unit, fuse, anyWire.orElse(null)).ifPresent(problems::add);
        boolean isTrap =
                problems.size() > before
                        || anyWire.filter(wire -> fuse.marked().compareTo(wire.allowed()) > 0)
                                .isPresent();
        if (unit.isGlass() && isTrap) {
            problems.add(marking(unit, fuse, anyWire.orElse(null)));
        }
    }

    /** Wires too weak by themselves before those that only their bundle makes too weak; new ones before recorded ones. */
    private Optional<Weakest> told(FuseUnit unit, FuseRating fuse) {
        return weakest(unit, true, Weakest::alone)
                .filter(wire -> isOver(fuse, wire.alone()))
                .or(
                        () ->
                                weakest(unit, false, Weakest::alone)
                                        .filter(wire -> isOver(fuse, wire.alone())))
                .or(
                        () ->
                                weakest(unit, true, Weakest::allowed)
                                        .filter(wire -> isOver(fuse, wire.allowed())))
                .or(
                        () ->
                                weakest(unit, false, Weakest::allowed)
                                        .filter(wire -> isOver(fuse, wire.allowed())));
    }

    private static boolean isOver(FuseRating fuse, Current wire) {
        return fuse.continuous().compareTo(wire) > 0;
    }

    private Optional<Weakest> weakest(
            FuseUnit unit, boolean newOnly, Function<Weakest, Current> figure) {
        Weakest weakest = null;
        for (String wire : unit.wires()) {
            if (newOnly && !looms.additions().hasWire(wire)) {
                continue;
            }
            int index = looms.now().wires().find(wire);
            for (Observed scenario : looms.now().scenarios()) {
                InScenario currents = scenario.currents();
                Weakest next =
                        new Weakest(
                                wire,
                                index,
                                currents.allowed(index),
                                currents.alone(index),
                                scenario);
                if (weakest == null || figure.apply(next).compareTo(figure.apply(weakest)) < 0) {
                    weakest = next;
                }
            }
        }
        return Optional.ofNullable(weakest);
    }

    /**
     * @param least what the weakest of all wires behind it may carry
     */
    private Problem overWire(FuseUnit unit, FuseRating fuse, Weakest weakest, Current least) {
        boolean isNew =
                looms.additions().hasWire(weakest.wire())
                        || looms.additions().hasDevice(unit.device().id());
        Blame blame =
                Blame.of(
                                isNew,
                                fuse.continuous().toDoubleAmperes()
                                        / weakest.allowed().toDoubleAmperes(),
                                before(fuse, weakest))
                        .ofLimitAlone();
        boolean isByBundle = !isOver(fuse, weakest.alone());
        String text =
                "%s (%s) carries %s for ever (%s), but wire %s (%s) behind it may carry %s: rated %s (%s), with %d loaded wires in its fullest segment in scenario '%s'.%s%s"
                        .formatted(
                                unit.words(),
                                FuseUnit.marking(fuse),
                                Words.of(fuse.continuous()),
                                Words.of(fuse.provenance()),
                                weakest.wire(),
                                looms.now().wires().size(weakest.index()).designation(),
                                Words.of(weakest.allowed()),
                                Words.of(looms.now().wires().size(weakest.index()).rating()),
                                Words.of(
                                        looms.now()
                                                .wires()
                                                .size(weakest.index())
                                                .ratingProvenance()),
                                weakest.where().currents().loadedWires(weakest.index()),
                                weakest.where().scenario(),
                                isByBundle
                                        ? " By itself it might carry %s."
                                                .formatted(Words.of(weakest.alone()))
                                        : "",
                                blame.words(Words.of(fuse.continuous())));
        return new Problem(
                new ElectricalFinding(
                        new Finding(
                                "electrical.fuse-over-wire",
                                severity(blame, !isByBundle),
                                subject(unit),
                                text),
                        weakest.where().scenario(),
                        Words.amperes(fuse.continuous()),
                        Words.amperes(weakest.allowed()),
                        looms.now().wires().size(weakest.index()).ratingProvenance(),
                        advice.overWire(fuse, least, weakest.allowed(), greatest(unit))),
                null,
                advice.change(unit, fuse, least, greatest(unit)).orElse(null));
    }

    /** What the fuse carries over what the wire might in the recorded loom. */
    private double before(FuseRating fuse, Weakest weakest) {
        return looms.useBefore(
                one -> {
                    int index = one.currents().find(weakest.wire());
                    return index < 0
                            ? 0
                            : fuse.continuous().toDoubleAmperes()
                                    / one.currents().allowed(index).toDoubleAmperes();
                },
                weakest.where());
    }

    private Current greatest(FuseUnit unit) {
        return looms.now().scenarios().stream()
                .map(unit::current)
                .reduce(Current.ZERO, (one, other) -> one.compareTo(other) > 0 ? one : other);
    }

    private Optional<Problem> underLoad(FuseUnit unit, FuseRating fuse, @Nullable Weakest weakest) {
        double aim = fuse.continuous().toDoubleAmperes() * rules.fuseLoad().value().toDouble();
        return looms.now()
                .worst(one -> unit.current(one).toDoubleAmperes())
                .filter(one -> unit.current(one).toDoubleAmperes() > aim)
                .map(one -> underLoad(unit, fuse, weakest, one));
    }

    private Problem underLoad(
            FuseUnit unit, FuseRating fuse, @Nullable Weakest weakest, Observed worst) {
        Current load = unit.current(worst);
        boolean isBeyond = load.compareTo(fuse.continuous()) > 0;
        Sourced<Current> limit = isBeyond ? beyond(fuse) : aim(fuse);
        double limitA = limit.value().toDoubleAmperes();
        double before = looms.stock().most(one -> unit.current(one).toDoubleAmperes());
        Blame blame =
                Blame.of(
                        looms.additions().hasDevice(unit.device().id()),
                        load.toDoubleAmperes() / limitA,
                        looms.useBefore(
                                one -> unit.current(one).toDoubleAmperes() / limitA, worst));
        String text =
                "%s (%s, carries %s) carries %s in scenario '%s', %s.%s"
                        .formatted(
                                unit.words(),
                                FuseUnit.marking(fuse),
                                Words.of(fuse.continuous()),
                                Words.of(load),
                                worst.scenario(),
                                isBeyond
                                        ? "more than it carries for ever"
                                        : "more than %s of what it carries (%s)"
                                                .formatted(
                                                        Words.of(rules.fuseLoad().value()),
                                                        Words.of(rules.fuseLoad().provenance())),
                                blame.words(Words.of(Current.roundedFromAmperes(before))));
        return Problem.told(
                new ElectricalFinding(
                        new Finding(
                                "electrical.fuse-under-load",
                                severity(blame, isBeyond),
                                subject(unit),
                                text),
                        worst.scenario(),
                        Words.amperes(load),
                        Words.amperes(limit.value()),
                        limit.provenance(),
                        advice.underLoad(load, weakest == null ? null : weakest.allowed())));
    }

    private static Sourced<Current> beyond(FuseRating fuse) {
        return new Sourced<>(fuse.continuous(), fuse.provenance());
    }

    private Sourced<Current> aim(FuseRating fuse) {
        return new Sourced<>(
                Current.roundedFromAmperes(
                        fuse.continuous().toDoubleAmperes() * rules.fuseLoad().value().toDouble()),
                rules.fuseLoad().provenance());
    }

    /** An aim, and a rating that only the bundle makes too small, are one step milder than a limit. */
    private static Severity severity(Blame blame, boolean isPlain) {
        if (isPlain) {
            return blame.severity();
        }
        return blame.severity() == Severity.FAULT ? Severity.WARNING : Severity.NOTE;
    }

    private Problem marking(FuseUnit unit, FuseRating fuse, @Nullable Weakest weakest) {
        String wire =
                weakest == null || fuse.marked().compareTo(weakest.allowed()) <= 0
                        ? ""
                        : " Wire %s behind it may carry %s."
                                .formatted(weakest.wire(), Words.of(weakest.allowed()));
        String text =
                "%s is glass: the %s on it is where it blows, and it carries %s (%s). A modern blade marked %s would carry about twice as much.%s"
                        .formatted(
                                unit.words(),
                                Words.of(fuse.marked()),
                                Words.of(fuse.continuous()),
                                Words.of(fuse.provenance()),
                                Words.of(fuse.marked()),
                                wire);
        return Problem.told(
                ElectricalFinding.of(
                        Finding.note("electrical.fuse-marking", subject(unit), text),
                        advice.substitute(fuse)));
    }

    private Problem unknown(FuseUnit unit) {
        String text =
                "%s: nobody has said which fuse is fitted, so what it protects cannot be checked (live wires behind it: %d)."
                        .formatted(unit.words(), unit.wires().size());
        boolean isNew = looms.additions().hasDevice(unit.device().id());
        return Problem.told(
                ElectricalFinding.of(
                        new Finding(
                                "electrical.fuse-unknown",
                                isNew ? Severity.WARNING : Severity.NOTE,
                                subject(unit),
                                text),
                        "Say its style and the figure on it."));
    }

    private static Subject subject(FuseUnit unit) {
        return Subject.of(ThingKind.DEVICE, unit.device().id());
    }
}
