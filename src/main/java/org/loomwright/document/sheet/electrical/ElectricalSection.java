package org.loomwright.document.sheet.electrical;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.electrical.report.WireFigures;
import org.loomwright.core.loom.Wire;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

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
                "Frozen with the revision, and calculated again for this sheet with the same"
                        + " figures. Loads count as resistors, contacts and earths as resistances"
                        + " from memory. Estimates"
                        + " for planning: measure before anything is trusted.");
        new StatesTable(side).set(flow);
        new FuseTable(change.after().loom(), side).set(flow);
        heaviest(flow);
        new FindingTables(side).set(flow);
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
        table.row(
                Type.strong(wire.id()),
                Type.words(wire.size()),
                Type.words(figures.scenario().isEmpty() ? "–" : figures.scenario()),
                Type.strongFigure(Figures.hundredthsA(figures.current())),
                Type.figure(Figures.signed(size.rating().toAmperes())),
                Type.figure(Long.toString(share)),
                Cell.empty(),
                Type.source(size.ratingProvenance()));
    }
}
