package org.loomwright.document.pdf;

import org.loomwright.document.pdf.Cell.Line;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.pdf.Table.Look;
import org.loomwright.document.pdf.Table.Row;
import org.loomwright.document.scene.Shape.Ink;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets a table into a flow. Rows that belong together stay together, the headings come again on every page, and a row is torn only
 * if it alone is higher than a page.
 */
final class TableSetter {

    private static final double PAD_X_PT = 3;
    private static final double PAD_Y_PT = 2.6;
    private static final double DESCENT = 0.24;
    private static final double HAIRLINE_PT = 0.3;
    private static final double RULE_PT = 0.9;
    private static final Ink TINT = new Ink("#e9e7e1");
    private static final TextStyle HEADING = TextStyle.of(Face.BOLD, 7.2);

    private final Flow flow;
    private final Table table;
    private final Tag tag;
    private final double leftPt;
    private final double[] edges;

    TableSetter(Flow flow, Table table) {
        this.flow = flow;
        this.table = table;
        this.tag = flow.section().child(Tag.Role.TABLE);
        this.leftPt = flow.paper().leftPt();
        this.edges = edges();
    }

    private double[] edges() {
        double whole = table.columns().stream().mapToDouble(Column::share).sum();
        double[] found = new double[table.columns().size() + 1];
        found[0] = leftPt;
        for (int i = 1; i < found.length; i++) {
            double share = table.columns().get(i - 1).share() / whole;
            found[i] = found[i - 1] + share * flow.paper().bodyWidthPt();
        }
        return found;
    }

    /** A row broken into lines. */
    private record SetRow(Row row, List<List<Line>> lines) {

        double heightPt() {
            double highest = 0;
            for (List<Line> cell : lines) {
                highest =
                        Math.max(
                                highest,
                                cell.stream().mapToDouble(line -> line.style().leadingPt()).sum());
            }
            return highest + 2 * PAD_Y_PT;
        }

        /** The row with lines {@code from} (inclusive) to {@code to} (exclusive) of each cell. */
        SetRow part(int from, int to) {
            return new SetRow(
                    row,
                    lines.stream()
                            .map(
                                    cell ->
                                            cell.subList(
                                                    Math.min(from, cell.size()),
                                                    Math.min(to, cell.size())))
                            .toList());
        }

        int mostLines() {
            return lines.stream().mapToInt(List::size).max().orElse(0);
        }
    }

    void set() {
        SetRow heading = heading();
        List<List<SetRow>> blocks = blocks();
        double first = blocks.isEmpty() ? 0 : height(blocks.getFirst());
        flow.makeRoom(Math.min(heading.heightPt() + first, flow.paper().bodyHeightPt()));
        drawHeading(heading);
        for (List<SetRow> block : blocks) {
            boolean fits = height(block) <= flow.remainingPt();
            if (!fits && height(block) + heading.heightPt() <= flow.paper().bodyHeightPt()) {
                flow.newPage();
                drawHeading(heading);
            }
            setBlock(block, heading);
        }
        flow.space(8);
    }

    private static double height(List<SetRow> rows) {
        return rows.stream().mapToDouble(SetRow::heightPt).sum();
    }

    private List<List<SetRow>> blocks() {
        List<List<SetRow>> blocks = new ArrayList<>();
        boolean open = false;
        for (Row row : table.rows()) {
            if (blocks.isEmpty() || !(open || row.belongsToTheRowAbove())) {
                blocks.add(new ArrayList<>());
            }
            blocks.getLast().add(broken(row));
            open = row.look() == Look.GROUP;
        }
        return blocks;
    }

    private SetRow broken(Row row) {
        List<List<Line>> lines = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            double width = row.isWide() ? flow.paper().bodyWidthPt() : edges[i + 1] - edges[i];
            lines.add(row.cells().get(i).lines(width - 2 * PAD_X_PT));
        }
        return new SetRow(row, lines);
    }

    private SetRow heading() {
        List<Cell> cells =
                table.columns().stream()
                        .map(
                                column ->
                                        new Cell(
                                                List.of(new Cell.Part(column.heading(), HEADING)),
                                                column.align(),
                                                null))
                        .toList();
        return broken(new Row(cells, Look.PLAIN));
    }

    private void drawHeading(SetRow heading) {
        if (table.columns().stream().allMatch(column -> column.heading().isEmpty())) {
            return;
        }
        double top = flow.take(heading.heightPt());
        double bottom = top + heading.heightPt();
        double right = flow.paper().rightPt();
        flow.page().decorate(canvas -> canvas.rule(leftPt, top, right, top, RULE_PT));
        drawCells(heading, top, true);
        flow.page().decorate(canvas -> canvas.rule(leftPt, bottom, right, bottom, RULE_PT / 2));
    }

    /** No rule between a row and what stands under it. */
    private void setBlock(List<SetRow> block, SetRow heading) {
        for (int i = 0; i < block.size(); i++) {
            boolean ruled = i + 1 == block.size() || block.get(i + 1).row().look() != Look.UNDER;
            setRow(block.get(i), heading, ruled);
        }
    }

    private void setRow(SetRow row, SetRow heading, boolean ruled) {
        if (row.heightPt() <= flow.remainingPt()) {
            drawRow(row, ruled);
            return;
        }
        if (row.heightPt() + heading.heightPt() <= flow.paper().bodyHeightPt()) {
            flow.newPage();
            drawHeading(heading);
            drawRow(row, ruled);
            return;
        }
        setTorn(row, heading);
    }

    /** The last resort: a row higher than a page goes on over as many pages as it needs. */
    private void setTorn(SetRow row, SetRow heading) {
        int done = 0;
        while (done < row.mostLines()) {
            int to = done + 1;
            while (to < row.mostLines()
                    && row.part(done, to + 1).heightPt() <= flow.remainingPt()) {
                to++;
            }
            SetRow part = row.part(done, to);
            if (part.heightPt() > flow.remainingPt()) {
                flow.newPage();
                drawHeading(heading);
            } else {
                drawRow(part, true);
                done = to;
            }
        }
    }

    private void drawRow(SetRow row, boolean ruled) {
        double top = flow.take(row.heightPt());
        double bottom = top + row.heightPt();
        double right = flow.paper().rightPt();
        if (row.row().look() == Look.GROUP) {
            flow.page()
                    .decorate(
                            canvas ->
                                    canvas.box(leftPt, top, right - leftPt, bottom - top, TINT, 0));
        }
        drawCells(row, top, false);
        if (ruled) {
            double weight = row.row().look() == Look.TOTAL ? RULE_PT : HAIRLINE_PT;
            flow.page().decorate(canvas -> canvas.rule(leftPt, bottom, right, bottom, weight));
        }
    }

    private void drawCells(SetRow row, double top, boolean heading) {
        Tag rowTag = tag.child(Tag.Role.ROW);
        for (int i = 0; i < row.lines().size(); i++) {
            Tag cellTag = rowTag.child(heading ? Tag.Role.HEADING_CELL : Tag.Role.CELL);
            double from = (row.row().isWide() ? leftPt : edges[i]) + PAD_X_PT;
            double to = (row.row().isWide() ? flow.paper().rightPt() : edges[i + 1]) - PAD_X_PT;
            Cell cell = row.row().cells().get(i);
            List<Line> lines = row.lines().get(i);
            flow.page().add(cellTag, canvas -> drawCell(canvas, cell, lines, from, to, top));
        }
    }

    private static void drawCell(
            Canvas canvas, Cell cell, List<Line> lines, double from, double to, double top) {
        double y = top + PAD_Y_PT;
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            y += line.style().leadingPt();
            double baseLine = y - DESCENT * line.style().leadingPt();
            if (i == 0 && cell.swatch() != null) {
                SwatchPainter.paint(canvas, cell.swatch(), from, baseLine, line.style().sizePt());
            }
            switch (cell.align()) {
                case LEFT ->
                        canvas.text(line.text(), line.style(), from + cell.indentPt(), baseLine);
                case RIGHT -> canvas.textEndingAt(line.text(), line.style(), to, baseLine);
                case CENTRE ->
                        canvas.textCentredOn(line.text(), line.style(), (from + to) / 2, baseLine);
            }
        }
    }
}
