package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.electrical.WireResistance;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.Flow.Edge;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * {@code electrical.voltage-drop}: a load that gets too small a share of the voltage between the terminals of the source that feeds it,
 * lost on the way out and back; a battery that is charged counts as one. Beyond the limit of its kind of circuit it is a fault or, as original, a warning; what is new or made
 * worse is also held to the aim and noted.
 */
final class DropCheck {

    private final Compared looms;
    private final Catalogue catalogue;
    private final CurrentRules rules;
    private final WireResistance resistance;
    private final Map<String, List<Loaded>> now;

    DropCheck(Compared looms, Catalogue catalogue, CurrentRules rules, WireResistance resistance) {
        this.looms = looms;
        this.catalogue = catalogue;
        this.rules = rules;
        this.resistance = resistance;
        this.now = byLoad(looms.now());
    }

    /** A load in one scenario. */
    private record Loaded(LoadPath path, Observed where) {}

    List<Problem> find() {
        Map<String, Loaded> before = new HashMap<>();
        if (looms.recorded() != null) {
            byLoad(looms.recorded()).forEach((key, all) -> before.put(key, worst(all)));
        }
        List<Problem> problems = new ArrayList<>();
        now.forEach(
                (key, all) -> {
                    Loaded worst = worst(all);
                    judge(worst, shareBefore(key, worst, before)).ifPresent(problems::add);
                });
        return problems;
    }

    /** Every load in the scenarios in which it is on, in their order. */
    private static Map<String, List<Loaded>> byLoad(Observations loom) {
        Map<String, List<Loaded>> byLoad = new TreeMap<>();
        for (Observed scenario : loom.scenarios()) {
            for (LoadPath path : scenario.paths()) {
                byLoad.computeIfAbsent(path.key(), key -> new ArrayList<>())
                        .add(new Loaded(path, scenario));
            }
        }
        return byLoad;
    }

    private static Loaded worst(List<Loaded> all) {
        return all.stream()
                .reduce((one, other) -> share(other) > share(one) ? other : one)
                .orElseThrow();
    }

    private static double share(Loaded worst) {
        return worst.path().share().toDouble();
    }

    /** Not a number where nobody knows. */
    private double shareBefore(String key, Loaded now, Map<String, Loaded> before) {
        if (looms.recorded() == null) {
            return looms.additions().equals(Additions.NONE) ? share(now) : Double.NaN;
        }
        Loaded recorded = before.get(key);
        return recorded == null ? Double.NaN : share(recorded);
    }

    /** A share within the limit says nothing of a scenario that the recorded loom was not simulated in. */
    private double useBefore(double before, double limit, Loaded now) {
        boolean isKnown =
                looms.recorded() == null
                        || before > limit
                        || looms.recorded().has(now.where().scenario());
        return isKnown ? before / limit : Double.NaN;
    }

    private Optional<Problem> judge(Loaded worst, double before) {
        Device device = looms.now().loom().getDevice(worst.path().load().device());
        DropLimit limits = rules.drop(kindOf(worst.path(), device));
        double share = share(worst);
        double limit = limits.limit().value().toDouble();
        double aim = limits.aim().value().toDouble();
        boolean isNew = looms.additions().hasDevice(device.id());
        if (share > limit) {
            Blame blame = Blame.of(isNew, share / limit, useBefore(before, limit, worst));
            return Optional.of(problem(worst, device, limits, blame, before));
        }
        boolean isToldOfAim = isNew || !Double.isNaN(before) && before <= aim;
        return share > aim && isToldOfAim
                ? Optional.of(note(worst, device, limits))
                : Optional.empty();
    }

    /** A relay's coil is a thing of control whatever it serves; only the starter itself hangs on the starter's lead. */
    private CircuitKind kindOf(LoadPath path, Device device) {
        if (path.charges()) {
            return CircuitKind.CHARGING;
        }
        CircuitKind kind =
                Tracing.serviceOf(device, catalogue).map(Service::kind).orElse(CircuitKind.GENERAL);
        boolean isCoil = path.load().element() == Element.COIL;
        boolean isOther = kind == CircuitKind.STARTING && device.kind() != DeviceKind.STARTER;
        return isCoil || isOther ? CircuitKind.CONTROL : kind;
    }

    private Problem problem(
            Loaded worst, Device device, DropLimit limits, Blame blame, double before) {
        String text =
                "%s The limit is %s (%s).%s"
                        .formatted(
                                lost(worst, device),
                                Words.of(limits.limit().value()),
                                Words.of(limits.limit().provenance()),
                                blame.words(beforeWords(before)));
        return new Problem(
                finding(blame.severity(), worst, device, text, limits.limit()),
                cure(worst, limits.limit().value()));
    }

    private static String beforeWords(double before) {
        return Double.isNaN(before) ? "" : Words.of(Ratio.rounded(before, RoundingMode.HALF_UP));
    }

    private Problem note(Loaded worst, Device device, DropLimit limits) {
        String text =
                "%s It keeps within the limit of %s, but new work should aim at %s (%s)."
                        .formatted(
                                lost(worst, device),
                                Words.of(limits.limit().value()),
                                Words.of(limits.aim().value()),
                                Words.of(limits.aim().provenance()));
        return Problem.told(finding(Severity.NOTE, worst, device, text, limits.aim()));
    }

    private static ElectricalFinding finding(
            Severity severity, Loaded worst, Device device, String text, Sourced<Ratio> limit) {
        return new ElectricalFinding(
                new Finding(
                        "electrical.voltage-drop",
                        severity,
                        Subject.of(ThingKind.DEVICE, device.id()),
                        text),
                worst.where().scenario(),
                Words.percent(worst.path().share()),
                Words.percent(limit.value()),
                limit.provenance(),
                severity == Severity.NOTE
                        ? "Take a thicker wire where most is lost."
                        : Problem.NO_SINGLE_CHANGE);
    }

    private static String lost(Loaded worst, Device device) {
        LoadPath path = worst.path();
        String where =
                path.worstWire()
                        .map(
                                edge ->
                                        " Most of it is lost in wire %s (%s V); contacts, fuses and earth screws lose %s together (their resistance is from memory)."
                                                .formatted(
                                                        edge.wire(),
                                                        volts(edge),
                                                        path.lostInContacts()))
                        .orElse("");
        return "%s loses %s of %s, %s, out and back in scenario '%s'.%s"
                .formatted(
                        Words.of(device),
                        path.lost(),
                        path.supply(),
                        Words.of(path.share()),
                        worst.where().scenario(),
                        where);
    }

    private static String volts(Edge edge) {
        return BigDecimal.valueOf(edge.millivolts(), 3).toPlainString();
    }

    private Cure cure(Loaded worst, Ratio limit) {
        String key = worst.path().key();
        return new Cure(
                (trial, readings) -> holds(trial.loom(), readings, key, limit),
                broken(key, limit),
                thicker(worst, limit),
                edge -> false,
                List.of(worst.path()));
    }

    private List<Observed> broken(String key, Ratio limit) {
        Comparator<Loaded> byShare = Comparator.comparing(worst -> worst.path().share());
        return now.getOrDefault(key, List.of()).stream()
                .filter(load -> load.path().share().compareTo(limit) > 0)
                .sorted(byShare.reversed())
                .map(Loaded::where)
                .toList();
    }

    private static boolean holds(Loom changed, Readings readings, String key, Ratio limit) {
        Flow flow = new Flow(changed, readings);
        return flow.paths().stream()
                .anyMatch(path -> path.key().equals(key) && path.share().compareTo(limit) <= 0);
    }

    /** By calculation with the current as it is: what a size loses is in proportion to its resistance. */
    private Map<String, Predicate<ConductorSize>> thicker(Loaded worst, Ratio limit) {
        LoadPath path = worst.path();
        double tooMuch = path.lost().millivolts() - limit.toDouble() * path.supply().millivolts();
        Temperature conductors = worst.where().flow().readings().scenario().conductors();
        Map<String, Predicate<ConductorSize>> thicker = new LinkedHashMap<>();
        for (Edge edge : path.edges()) {
            String wire = edge.wire();
            if (wire != null && edge.millivolts() >= tooMuch) {
                double now = ohms(looms.now().loom().getWire(wire).size(), conductors);
                thicker.put(
                        wire,
                        size ->
                                edge.millivolts() * (1 - ohms(size.designation(), conductors) / now)
                                        >= tooMuch);
            }
        }
        return thicker;
    }

    private double ohms(String size, Temperature conductors) {
        return resistance.perMetre(size, conductors).toDoubleMilliohmsPerMetre();
    }
}
