package org.loomwright.core.electrical.report;

import org.loomwright.core.electrical.charging.ChargingBalance;
import org.loomwright.core.electrical.charging.ChargingBalances;
import org.loomwright.core.electrical.charging.ChargingChecks;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.Additions;
import org.loomwright.core.electrical.check.current.CheckedFinding;
import org.loomwright.core.electrical.check.current.CurrentChecks;
import org.loomwright.core.electrical.fault.FuseLoss;
import org.loomwright.core.electrical.fault.FuseLosses;
import org.loomwright.core.electrical.fault.ShortCircuit;
import org.loomwright.core.electrical.fault.ShortCircuitFindings;
import org.loomwright.core.electrical.fault.ShortCircuits;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.electrical.simulation.SettledLoom;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.simulation.StandardScenario;
import org.loomwright.core.electrical.structure.Newcomers;
import org.loomwright.core.electrical.structure.StructureChecks;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Asks every check there is about one loom and its additions. Cost: for each scenario a few solutions of the loom's net, and a
 * further solution for every change that is tried as a remedy. Immutable and thread-safe.
 */
public final class ElectricalReports {

    private static final Comparator<CheckedFinding> WORST_FIRST =
            Comparator.comparing(CheckedFinding::finding, ElectricalFinding.WORST_FIRST);

    private final ElectricalBasis basis;

    /** Whether the cheapest single change is looked for that would put a figure right. */
    public enum Changes {
        /** Each is tried by simulating the changed loom. */
        SOUGHT,
        /** Remedies are general. */
        LEFT_OUT
    }

    /**
     * @param basis what every report rests on
     */
    public ElectricalReports(ElectricalBasis basis) {
        this.basis = basis;
    }

    /**
     * @param recorded the loom as it was recorded
     * @param loom the loom as it is going to be; the recorded one where nothing is added
     * @param changes whether to look for the cheapest change for each figure that breaks its limit, which takes many times as long
     * @return the report
     */
    public ElectricalReport of(Loom recorded, Loom loom, Changes changes) {
        List<SettledLoom> settled = settled(loom);
        boolean isRecorded = recorded.equals(loom);
        Map<String, Readings> now = readings(settled);
        Map<String, Readings> before = isRecorded ? now : readings(settled(recorded));
        List<ChargingBalance> balancesBefore = balances(recorded, before);
        List<ChargingBalance> balances = isRecorded ? balancesBefore : balances(loom, now);
        List<FuseLoss> losses = new FuseLosses(loom, basis.behaviours()).all();
        List<ShortCircuit> shorts = shorts(loom, settled, losses);
        Tracing tracing = basis.tracing(loom);
        List<CheckedFinding> findings =
                new ArrayList<>(currents(recorded, loom, tracing, before, now, changes));
        Newcomers newcomers = new Newcomers(recorded);
        plain(structure(loom, tracing, newcomers), findings);
        plain(
                new ChargingChecks(basis.charging())
                        .findings(lasting(balances), lasting(balancesBefore)),
                findings);
        plain(shortFindings(loom, shorts, newcomers), findings);
        plain(ofSimulation(now), findings);
        return new ElectricalReport(
                scenarios(now, balances, before, balancesBefore),
                ChargingBalances.ampereHours(balances, hours()),
                findings.stream().sorted(WORST_FIRST).toList(),
                wires(loom, now),
                shorts,
                losses);
    }

    /** Of scenarios in which the loom can be, which are all but those of a table that does not fit it. */
    private List<SettledLoom> settled(Loom loom) {
        Simulation simulation = basis.simulation(loom);
        return basis.scenarios().of(loom, basis.catalogue()).stream()
                .map(simulation::settle)
                .flatMap(outcome -> accepted(outcome).stream())
                .toList();
    }

    private static Map<String, Readings> readings(List<SettledLoom> settled) {
        Map<String, Readings> readings = new LinkedHashMap<>();
        settled.stream()
                .map(SettledLoom::readings)
                .forEach(it -> readings.put(it.scenario().name(), it));
        return readings;
    }

    private static <T> Optional<T> accepted(Outcome<T> outcome) {
        return switch (outcome) {
            case Outcome.Accepted<T>(T value) -> Optional.of(value);
            case Outcome.Rejected<T> rejected -> Optional.empty();
        };
    }

    private List<ChargingBalance> balances(Loom loom, Map<String, Readings> readings) {
        return new ChargingBalances(
                        loom,
                        basis.catalogue(),
                        basis.behaviours(),
                        basis.settings(),
                        basis.charging())
                .of(List.copyOf(readings.values()));
    }

    /** What is on for moments or never together says nothing about charging. */
    private List<ChargingBalance> lasting(List<ChargingBalance> balances) {
        Set<String> lasting =
                basis.scenarios().rows().stream()
                        .filter(StandardScenario::lasts)
                        .map(StandardScenario::name)
                        .collect(Collectors.toSet());
        return balances.stream().filter(it -> lasting.contains(it.scenario())).toList();
    }

    private Map<String, BigDecimal> hours() {
        return basis.scenarios().rows().stream()
                .collect(Collectors.toMap(StandardScenario::name, StandardScenario::hoursPerDay));
    }

    private List<CheckedFinding> currents(
            Loom recorded,
            Loom loom,
            Tracing tracing,
            Map<String, Readings> before,
            Map<String, Readings> now,
            Changes changes) {
        CurrentChecks checks =
                new CurrentChecks(loom, basis.catalogue(), basis.tables(), tracing, basis.rules());
        List<Readings> readings = List.copyOf(now.values());
        CurrentChecks.Recorded compared =
                recorded.equals(loom)
                        ? null
                        : new CurrentChecks.Recorded(recorded, List.copyOf(before.values()));
        Additions additions = additions(new Newcomers(recorded), recorded, loom);
        return switch (changes) {
            case SOUGHT -> checks.findWithChanges(readings, compared, additions, basis::simulation);
            case LEFT_OUT ->
                    checks.find(readings, compared, additions).stream()
                            .map(finding -> new CheckedFinding(finding, Optional.empty()))
                            .toList();
        };
    }

    private static Additions additions(Newcomers newcomers, Loom recorded, Loom loom) {
        Set<String> wires =
                loom.wires().values().stream()
                        .filter(wire -> newcomers.isNew(wire) || isRenewed(wire, recorded))
                        .map(Wire::id)
                        .collect(Collectors.toSet());
        Set<String> devices =
                loom.devices().values().stream()
                        .filter(newcomers::isNew)
                        .map(Device::id)
                        .collect(Collectors.toSet());
        return new Additions(wires, devices);
    }

    /** A new wire in the place of an old one, though colour and size may be the same. */
    private static boolean isRenewed(Wire wire, Loom recorded) {
        Wire before = recorded.wires().get(wire.id());
        return before != null && before.condition() != wire.condition();
    }

    private List<ElectricalFinding> structure(Loom loom, Tracing tracing, Newcomers newcomers) {
        return new StructureChecks(
                        loom,
                        newcomers,
                        basis.catalogue(),
                        basis.behaviours(),
                        tracing,
                        basis.structure())
                .findings();
    }

    private List<ShortCircuit> shorts(Loom loom, List<SettledLoom> settled, List<FuseLoss> losses) {
        return new ShortCircuits(loom, basis.catalogue(), basis.tables(), basis.faults(), losses)
                .worst(settled.stream().map(SettledLoom::shorted).toList());
    }

    private List<ElectricalFinding> shortFindings(
            Loom loom, List<ShortCircuit> shorts, Newcomers newcomers) {
        return new ShortCircuitFindings(
                        loom,
                        basis.catalogue(),
                        basis.faults(),
                        wire -> newcomers.isNew(loom.getWire(wire)))
                .of(shorts);
    }

    /** What the simulation noticed, once for each thing, in the first scenario that shows it. */
    private static List<ElectricalFinding> ofSimulation(Map<String, Readings> readings) {
        Map<String, ElectricalFinding> first = new LinkedHashMap<>();
        readings.forEach(
                (scenario, reading) -> {
                    for (Finding finding : reading.findings()) {
                        first.putIfAbsent(
                                finding.code() + " " + finding.subject().words(),
                                new ElectricalFinding(finding, scenario, null, null, null, ""));
                    }
                });
        return List.copyOf(first.values());
    }

    private static void plain(List<ElectricalFinding> more, List<CheckedFinding> findings) {
        more.forEach(finding -> findings.add(new CheckedFinding(finding, Optional.empty())));
    }

    private static List<ScenarioFigures> scenarios(
            Map<String, Readings> now,
            List<ChargingBalance> balances,
            Map<String, Readings> before,
            List<ChargingBalance> balancesBefore) {
        Map<String, ChargingBalance> recorded = new HashMap<>();
        balancesBefore.forEach(balance -> recorded.put(balance.scenario(), balance));
        List<ScenarioFigures> figures = new ArrayList<>();
        for (ChargingBalance balance : balances) {
            Readings readings = now.get(balance.scenario());
            Readings readingsBefore = before.get(balance.scenario());
            if (readings != null) {
                figures.add(
                        new ScenarioFigures(
                                readings.scenario(),
                                readings.drawn(),
                                balance,
                                readingsBefore == null ? null : readingsBefore.drawn(),
                                recorded.get(balance.scenario())));
            }
        }
        return figures;
    }

    private static List<WireFigures> wires(Loom loom, Map<String, Readings> readings) {
        Map<String, WireFigures> most = new LinkedHashMap<>();
        loom.wires().keySet().forEach(id -> most.put(id, new WireFigures(id, Current.ZERO, "")));
        readings.forEach(
                (scenario, reading) -> {
                    for (WireReading wire : reading.wires()) {
                        Current current =
                                Current.ofMilliamperes(Math.abs(wire.current().milliamperes()));
                        most.computeIfPresent(
                                wire.wire(),
                                (id, before) ->
                                        current.compareTo(before.current()) > 0
                                                ? new WireFigures(id, current, scenario)
                                                : before);
                    }
                });
        return List.copyOf(most.values());
    }
}
