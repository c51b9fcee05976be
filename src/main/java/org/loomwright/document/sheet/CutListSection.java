package org.loomwright.document.sheet;

import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.CutLength;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.CutGroup;
import org.loomwright.document.sheet.content.CutGroup.Cut;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.content.WireWork;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** What to cut from which drum, every length with all its parts. */
final class CutListSection {

    private static final List<Function<CutLength, Length>> PARTS =
            List.of(
                    CutLength::alongLoom,
                    CutLength::tailA,
                    CutLength::tailB,
                    CutLength::takeUp,
                    CutLength::terminationA,
                    CutLength::terminationB,
                    CutLength::reserve,
                    CutLength::rounding);

    private final JobSheet sheet;
    private final WireWork work;

    CutListSection(JobSheet sheet, WireWork work) {
        this.sheet = sheet;
        this.work = work;
    }

    void set(Flow flow) {
        flow.section(Part.CUT_LIST.title());
        List<CutGroup> groups = CutGroup.of(work, sheet.change());
        if (groups.isEmpty()) {
            flow.text("No wire is to be cut.");
        } else {
            flow.text(
                    "Wires to make: added, replaced, or with a longer or shorter way than before."
                            + " All lengths in millimetres; subtotals in metres.");
            flow.table(table(groups));
        }
        flow.heading("Wires that are kept");
        flow.text(kept());
    }

    private Table table(List<CutGroup> groups) {
        Table table =
                new Table(
                        List.of(
                                Column.words("Wire", 44),
                                Column.words("Circuit", 92),
                                Column.figures("Along\nloom\nmm", 39),
                                Column.figures("Tail\nA\nmm", 32),
                                Column.figures("Tail\nB\nmm", 32),
                                Column.figures("Take-\nup\nmm", 36),
                                Column.figures("Termi-\nnation A\nmm", 38),
                                Column.figures("Termi-\nnation B\nmm", 38),
                                Column.figures("Re-\nserve\nmm", 34),
                                Column.figures("Round-\ning\nmm", 36),
                                Column.figures("CUT\n \nmm", 44)));
        int[] decimals = decimals(groups);
        for (CutGroup group : groups) {
            group(table, group, decimals);
        }
        Length all = Length.sum(groups.stream().map(CutGroup::total).toList());
        total(
                table,
                "In all: "
                        + Figures.count(
                                groups.stream().mapToInt(g -> g.cuts().size()).sum(),
                                "wire",
                                "wires"),
                all);
        return table;
    }

    private void group(Table table, CutGroup group, int[] decimals) {
        WireColour colour = group.wireClass().colour();
        String name =
                "%s  %s  %s"
                        .formatted(
                                colour.letters(),
                                group.wireClass().size(),
                                Type.colourWords(colour, sheet.catalogue()));
        String sum =
                Figures.count(group.cuts().size(), "wire", "wires")
                        + ", "
                        + Figures.metres(group.total());
        table.group(
                Type.strong(name).with(Type.swatch(colour, sheet.catalogue())),
                Type.strongFigure(sum));
        group.cuts().forEach(cut -> table.row(cells(cut, decimals)));
    }

    private static Cell[] cells(Cut cut, int[] decimals) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Type.strong(cut.wire().id()));
        cells.add(Type.words(cut.wire().circuit()));
        for (int i = 0; i < PARTS.size(); i++) {
            Length part = PARTS.get(i).apply(cut.length());
            cells.add(Type.figure(Figures.exactMm(part, decimals[i])));
        }
        cells.add(Type.strongFigure(Figures.exactMm(cut.length().cut())));
        return cells.toArray(Cell[]::new);
    }

    /** How many decimals each column needs, so that nothing is rounded and the points stand under each other. */
    private static int[] decimals(List<CutGroup> groups) {
        return PARTS.stream()
                .mapToInt(
                        part ->
                                groups.stream()
                                        .flatMap(group -> group.cuts().stream())
                                        .mapToInt(cut -> decimals(part.apply(cut.length())))
                                        .max()
                                        .orElse(0))
                .toArray();
    }

    private static int decimals(Length length) {
        return length.toMillimetres().scale();
    }

    private static void total(Table table, String words, Length total) {
        Cell[] cells = new Cell[11];
        Arrays.fill(cells, Cell.empty());
        cells[1] = Type.strong(words);
        cells[10] = Type.strongFigure(Figures.metres(total));
        table.total(cells);
    }

    private String kept() {
        int kept = sheet.change().after().loom().wires().size() - work.made().size();
        return "%s of the amended loom stay as they are and are not cut: leave them tied in place where the covering comes off, test each one, and make its ends again only where an order above says so. A kept wire that proves brittle or damaged is not replaced without the customer's word; then its length is the measured way with the same allowances."
                .formatted(Figures.count(kept, "wire", "wires"));
    }
}
