package org.loomwright.document.sheet;

import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Places;
import org.loomwright.document.sheet.content.WireChange;
import org.loomwright.document.sheet.content.WireChange.Kind;
import org.loomwright.document.sheet.content.WireWork;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.List;

/** Which wires go in, which are made otherwise, which come out, and why. */
final class WiresSection {

    private final JobSheet sheet;
    private final WireWork work;

    WiresSection(JobSheet sheet, WireWork work) {
        this.sheet = sheet;
        this.work = work;
    }

    void set(Flow flow) {
        flow.section(Part.WIRES.title());
        part(flow, "Wires to add", Kind.ADDED, "No wire is added.");
        part(flow, "Wires to change", Kind.CHANGED, "No wire is changed.");
        part(flow, "Wires to remove", Kind.REMOVED, "No wire is removed.");
    }

    private void part(Flow flow, String title, Kind kind, String none) {
        List<WireChange> wires = work.of(kind);
        flow.heading("%s: %d".formatted(title, wires.size()));
        if (wires.isEmpty()) {
            flow.text(none);
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("Wire", 42),
                                Column.words("Circuit", 70),
                                Column.words("Colour", 74),
                                Column.words("Size", 40),
                                Column.words("From: device, point, terminal", 96),
                                Column.words("To: device, point, terminal", 96),
                                Column.words(
                                        kind == Kind.CHANGED ? "What changes, and why" : "Why",
                                        92)));
        wires.forEach(wire -> row(table, wire));
        flow.table(table);
    }

    private void row(Table table, WireChange change) {
        Loom loom =
                change.kind() == Kind.REMOVED
                        ? sheet.change().before().loom()
                        : sheet.change().after().loom();
        table.row(
                Type.strong(change.wire().id()),
                Type.words(change.wire().circuit()),
                Type.colour(change.wire().colour(), sheet.catalogue()),
                Type.words(change.wire().size()),
                end(loom, change.wire().a()),
                end(loom, change.wire().b()),
                why(change));
    }

    private Cell end(Loom loom, WireEnd end) {
        String terminal = Places.terminal(sheet.catalogue(), end);
        Node node = loom.nodes().get(loom.getPoint(end).node());
        return Type.strong(Places.words(loom, end))
                .then(terminal, Type.CELL)
                .then(node == null ? "" : "leaves at " + node.name(), Type.SMALL);
    }

    private static Cell why(WireChange change) {
        Cell cell = new Cell(List.of(), Cell.Align.LEFT, null);
        for (String difference : change.differences()) {
            cell = cell.then(difference, Type.CELL);
        }
        if (change.kind() == Kind.CHANGED) {
            cell = cell.then(change.made() ? "make new" : "keep the wire", Type.STRONG);
        }
        return cell.then(change.why(), Type.ASIDE);
    }
}
