package org.loomwright.app;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.colour.ColourAudit;
import org.loomwright.core.colour.ColourClash;
import org.loomwright.core.colour.ColourProposal;
import org.loomwright.core.colour.ColourProposals;
import org.loomwright.core.colour.ColourReport;
import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.electrical.joining.JoinedLooms;
import org.loomwright.core.electrical.report.ElectricalBasis;
import org.loomwright.core.electrical.report.ElectricalReport;
import org.loomwright.core.electrical.report.ElectricalReports;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.structure.Newcomers;
import org.loomwright.core.finder.FoundWires;
import org.loomwright.core.finder.Sighting;
import org.loomwright.core.finder.WireFinder;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.open.Expectations;
import org.loomwright.core.open.OpenPoints;
import org.loomwright.core.open.OpenReport;
import org.loomwright.core.period.PeriodCheck;
import org.loomwright.core.period.PeriodReport;
import org.loomwright.core.period.PeriodTables;
import org.loomwright.exchange.TradeTables;
import org.springframework.stereotype.Component;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Looks at looms from their electrical side, with the tables that go with each. Nothing here touches a store. */
@Component
public class Electrics {

    /** Ten times a large vehicle's loom: some seconds. */
    static final int MOST_WIRES = 3_000;

    /** Every change is a simulation of its own; from about here on trying them takes seconds. */
    static final int MOST_WIRES_FOR_CHANGES = 300;

    private final ElectricalBasis printed;
    private final ColourCode code;
    private final Expectations expectations;
    private final PeriodTables periodTables;
    private final Tables tables;

    Electrics(
            ElectricalBasis basis,
            ColourCode code,
            Expectations expectations,
            PeriodTables periodTables,
            Tables tables) {
        this.printed = basis;
        this.code = code;
        this.periodTables = periodTables;
        this.expectations = expectations;
        this.tables = tables;
    }

    /** @return what everything about its electrical side rests on, with its own figures */
    public ElectricalBasis basis(WiredLoom wired) {
        TradeTables own = tables.with(wired.settings());
        return printed.with(own.catalogue(), own.electrical(), own.rules(), own.settings());
    }

    /** @return the tables that everything refers to */
    public Catalogue catalogue() {
        return printed.catalogue();
    }

    /** @return the states in which a loom is looked at, with the positions of its own switches */
    public List<Scenario> scenarios(WiredLoom wired) {
        return printed.scenarios().of(wired.loom(), printed.catalogue());
    }

    /** @return what a meter would show in that scenario, or why the loom cannot be in it */
    public Outcome<Readings> readings(WiredLoom wired, Scenario scenario) {
        return basis(wired).simulation(wired.loom()).run(scenario);
    }

    /** @return the same of two looms of one vehicle that are plugged together; their wires are named {@code loom:wire} */
    public Outcome<Readings> readings(WiredLoom one, WiredLoom other, Scenario scenario) {
        ElectricalBasis basis = basis(one);
        return JoinedLooms.of(
                        one.loom(), other.loom(), basis.catalogue(), one.settings().allowances())
                .then(joined -> joinedReadings(basis, joined, scenario));
    }

    private static Outcome<Readings> joinedReadings(
            ElectricalBasis basis, JoinedLooms joined, Scenario scenario) {
        return new Simulation(
                        joined.wiring(),
                        basis.tables(),
                        basis.behaviours(),
                        basis.settings(),
                        basis.solver())
                .run(scenario)
                .map(readings -> readings.noting(joined.findings()));
    }

    /**
     * @param wired a loom
     * @param changes whether to look for the cheapest changes; with more than {@link #MOST_WIRES_FOR_CHANGES} wires they are left out
     * @return everything that is to be said about its electrical side
     * @throws TooMuchWorkException if that takes too long while somebody waits
     */
    public ElectricalReport report(WiredLoom wired, Changes changes) {
        int wires = wired.loom().wires().size();
        if (wires > MOST_WIRES) {
            throw TooMuchWorkException.ofElectrics(wired.loom().name(), wires, MOST_WIRES);
        }
        return new ElectricalReports(basis(wired))
                .of(
                        wired.stock(),
                        wired.loom(),
                        wires > MOST_WIRES_FOR_CHANGES ? Changes.LEFT_OUT : changes);
    }

    /** @return what is to be said about its colours */
    public ColourReport colours(WiredLoom wired) {
        TracedLoom stock = traced(wired.stock());
        TracedLoom now = traced(wired.loom());
        ColourProposals proposals = new ColourProposals(now, code);
        SortedMap<String, ColourProposal> byWire = new TreeMap<>();
        List<String> added = added(wired);
        added.forEach(id -> proposals.of(id).ifPresent(it -> byWire.put(id, it)));
        return new ColourReport(
                byWire,
                differing(now, proposals, added),
                ColourClash.in(now),
                ColourAudit.of(stock, code));
    }

    private static List<String> added(WiredLoom wired) {
        return wired.loom().wires().values().stream()
                .filter(new Newcomers(wired.stock())::isNew)
                .map(Wire::id)
                .toList();
    }

    private List<Finding> differing(TracedLoom now, ColourProposals proposals, List<String> added) {
        return Stream.concat(
                        proposals.differing(added).stream(),
                        ColourAudit.outsideCode(now, code, added).stream())
                .sorted(Finding.WORST_FIRST)
                .toList();
    }

    private TracedLoom traced(Loom loom) {
        return TracedLoom.of(loom, printed.tracing(loom), printed.catalogue());
    }

    /** @return the wires of the loom that may be the one that somebody sees, or what is wrong with the question */
    public Outcome<FoundWires> find(WiredLoom wired, Sighting sighting) {
        return new WireFinder(traced(wired.loom()), code, basis(wired).simulation(wired.loom()))
                .find(sighting);
    }

    /** @return how far the additions are of the period */
    public PeriodReport period(WiredLoom wired) {
        TracedLoom now = traced(wired.loom());
        List<String> added = added(wired);
        List<Finding> about =
                new ArrayList<>(differing(now, new ColourProposals(now, code), added));
        about.addAll(ColourAudit.of(now, code, added));
        return new PeriodCheck(printed.catalogue(), printed.behaviours(), periodTables)
                .of(wired.stock(), wired.amended(), about);
    }

    /** @return what nobody has said about the loom and its additions */
    public OpenReport open(WiredLoom wired) {
        return new OpenPoints(printed.catalogue(), printed.behaviours(), expectations)
                .of(wired.stock(), wired.amended());
    }
}
