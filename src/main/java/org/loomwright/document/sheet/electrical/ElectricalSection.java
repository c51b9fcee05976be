package org.loomwright.document.sheet.electrical;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.electrical.charging.ChargingBalance;
import org.loomwright.core.electrical.report.ElectricalReport;
import org.loomwright.core.electrical.report.ScenarioFigures;
import org.loomwright.core.electrical.report.WireFigures;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.content.Sources;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** States of the vehicle, fuses, the heaviest new wires, and everything that was found about them. */
public final class ElectricalSection {

    private static final int HEAVIEST = 12;
    private static final int PERCENT = 100;

    private static final Comparator<WireFigures> HEAVIEST_FIRST =
            Comparator.comparing(WireFigures::current).reversed().thenComparing(WireFigures::wire);

    private final ChangeAnalysis change;
    private final ElectricalSide side;

    /**
     * @param change the stock loom beside the amended one
     * @param side its electrical side
     */
    public ElectricalSection(ChangeAnalysis change, ElectricalSide side) {
        this.change = change;
        this.side = side;
    }

    /** Sets the section. */
    public void set(Flow flow) {
        flow.section(Part.ELECTRICAL.title());
        flow.text(
                "Calculated from the frozen loom when this sheet was made; other than lengths and"
                        + " diameters, these figures are not frozen with the revision. Loads count"
                        + " as resistors, contacts and earths as resistances from memory. Estimates"
                        + " for planning: measure before anything is trusted.");
        states(flow);
        new FuseTable(change.after().loom(), side).set(flow);
        heaviest(flow);
        new FindingTables(side).set(flow);
    }

    private void states(Flow flow) {
        flow.heading("States of the vehicle: what is drawn, what the generator can give");
        ElectricalReport report = side.report();
        if (report.scenarios().isEmpty()) {
            flow.text("This loom can be in none of the states that are looked at.");
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("State", 120),
                                Column.words("Engine", 43),
                                Column.figures("Drawn at\nmost, stock\nA", 49),
                                Column.figures("Drawn at\nmost, new\nA", 49),
                                Column.figures("Average,\nstock\nA", 44),
                                Column.figures("Average,\nnew\nA", 44),
                                Column.figures("Generator\ncan give\nA", 47),
                                Column.figures("Balance,\nnew\nA", 44),
                                Column.figures("Flat\nafter\nh", 34)));
        report.scenarios().forEach(state -> state(table, state));
        flow.table(table);
        flow.note(
                "Stock is the loom as recorded, new with the additions. The average counts what"
                    + " works now and then by its share of the time. A balance of 1 A is 1 Ah an"
                    + " hour; flat: a full battery, used as the limits at the end of this sheet"
                    + " say. “–”: not in that state, or not emptied.");
        flow.text(day(report.ampereHoursPerDay()), Type.TEXT_STRONG, 0);
    }

    private static void state(Table table, ScenarioFigures state) {
        ChargingBalance now = state.charging();
        ChargingBalance before = state.recordedCharging();
        Current drawnBefore = state.recordedDrawn();
        BigDecimal hours = now.hoursToFlat();
        table.row(
                Type.strong(state.scenario().name()),
                Type.words(words(now.engine())),
                Type.figure(drawnBefore == null ? "–" : Figures.tenthsA(drawnBefore)),
                Type.figure(Figures.tenthsA(state.drawn())),
                Type.figure(before == null ? "–" : Figures.tenthsA(before.drawn())),
                Type.figure(Figures.tenthsA(now.drawn())),
                Type.figure(Figures.tenthsA(now.output())),
                now.isNegative()
                        ? Type.strongFigure(Figures.tenthsA(now.balance()))
                        : Type.figure(Figures.tenthsA(now.balance())),
                Type.figure(hours == null ? "–" : hours.toPlainString()));
    }

    private static String words(Engine engine) {
        return switch (engine) {
            case OFF -> "off";
            case IDLE -> "at idle";
            case AT_SPEED -> "at speed";
        };
    }

    private static String day(BigDecimal ampereHours) {
        return "Balance of a winter day with the additions: %s Ah. %s How the day is divided among the states is this program's own choice, from memory."
                .formatted(
                        Figures.signed(ampereHours),
                        ampereHours.signum() < 0
                                ? "The battery gives more than it gets."
                                : "The battery gets no less than it gives.");
    }

    private void heaviest(Flow flow) {
        Set<String> made = NewWires.made(change).stream().map(Wire::id).collect(Collectors.toSet());
        List<WireFigures> wires =
                side.report().wires().stream()
                        .filter(figures -> made.contains(figures.wire()))
                        .sorted(HEAVIEST_FIRST)
                        .toList();
        flow.heading("The heaviest of the new wires");
        if (wires.isEmpty()) {
            flow.text("No wire is new.");
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("Wire", 44),
                                Column.words("Size", 66),
                                Column.words("Carries most in state", 122),
                                Column.figures("Carries at\nmost A", 48),
                                Column.figures("Rated, in\nfree air, A", 48),
                                Column.figures("Share of\nrating %", 44),
                                Column.words("", 10),
                                Column.words("Where the rating comes from", 116)));
        wires.stream().limit(HEAVIEST).forEach(wire -> wire(table, wire));
        flow.table(table);
        flow.note(rest(wires));
    }

    private static String rest(List<WireFigures> wires) {
        String more =
                wires.size() <= HEAVIEST
                        ? ""
                        : "%s carry no more than %s A each. "
                                .formatted(
                                        Figures.count(
                                                wires.size() - HEAVIEST,
                                                "more new wire",
                                                "more new wires"),
                                        Figures.hundredthsA(wires.get(HEAVIEST).current()));
        return more
                + "The rating is that of one cable in free air; where its bundle or a warm place"
                + " leaves too little of it, a finding says so below.";
    }

    private void wire(Table table, WireFigures figures) {
        Wire wire = change.after().loom().getWire(figures.wire());
        ConductorSize size = side.basis().catalogue().getSize(wire.size());
        long share =
                Math.round(
                        (double) PERCENT
                                * figures.current().milliamperes()
                                / size.rating().milliamperes());
        boolean recalled = Sources.isFromMemory(size.ratingProvenance());
        table.row(
                Type.strong(wire.id()),
                Type.words(wire.size()),
                Type.words(figures.scenario().isEmpty() ? "–" : figures.scenario()),
                Type.strongFigure(Figures.hundredthsA(figures.current())),
                Type.figure(Figures.signed(size.rating().toAmperes())),
                Type.figure(Long.toString(share)),
                Cell.empty(),
                Cell.of(
                        Sources.words(size.ratingProvenance()),
                        recalled ? Type.STRONG : Type.CELL));
    }
}
