package org.loomwright.document.sheet.electrical;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.electrical.report.CheckLimit;
import org.loomwright.core.electrical.report.CheckLimits;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.pdf.TextStyle;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What figures are held against, and how far each limit can be trusted. */
public final class LimitsSection {

    private final Loom loom;
    private final ElectricalSide side;

    /**
     * @param loom the amended loom
     * @param side its electrical side
     */
    public LimitsSection(Loom loom, ElectricalSide side) {
        this.loom = loom;
        this.side = side;
    }

    /** Sets the section. */
    public void set(Flow flow) {
        List<CheckLimit> limits = CheckLimits.of(side.basis());
        long recalled = limits.stream().filter(one -> Type.isRecalled(one.provenance())).count();
        flow.section(Part.LIMITS.title());
        flow.text(
                "%d of these %d limits are from memory and stand out; nothing was read for them, and each may be wrong. Short keys are those of the list of sources that comes with the program."
                        .formatted(recalled, limits.size()));
        Table table =
                new Table(
                        List.of(
                                Column.words("Check", 160),
                                Column.words("Limit", 152),
                                Column.words("Status", 62),
                                Column.words("Source", 126)));
        merged(limits).forEach(limit -> row(table, limit));
        flow.table(table);
        ratings(flow);
    }

    /** Neighbours of one check and one source in one row. */
    private static List<CheckLimit> merged(List<CheckLimit> limits) {
        List<CheckLimit> merged = new ArrayList<>();
        for (CheckLimit limit : limits) {
            CheckLimit last = merged.isEmpty() ? limit : merged.getLast();
            if (!merged.isEmpty()
                    && last.check().equals(limit.check())
                    && last.provenance().equals(limit.provenance())) {
                String both = last.limit() + "\n" + limit.limit();
                merged.set(
                        merged.size() - 1, new CheckLimit(limit.check(), both, limit.provenance()));
            } else {
                merged.add(limit);
            }
        }
        return merged;
    }

    private static void row(Table table, CheckLimit limit) {
        TextStyle style = Type.isRecalled(limit.provenance()) ? Type.STRONG : Type.CELL;
        String status = limit.provenance().status().words();
        String source = limit.provenance().source();
        table.row(
                Cell.of(limit.check(), style),
                Cell.of(limit.limit(), style),
                Cell.of(status, style),
                Cell.of(source.equals(status) ? "–" : source, style));
    }

    private void ratings(Flow flow) {
        Catalogue catalogue = side.basis().catalogue();
        String recalled =
                loom.wires().values().stream()
                        .map(Wire::size)
                        .distinct()
                        .sorted()
                        .map(catalogue::getSize)
                        .filter(size -> Type.isRecalled(size.ratingProvenance()))
                        .map(LimitsSection::words)
                        .collect(Collectors.joining(", "));
        flow.text(
                recalled.isEmpty()
                        ? "No rating of a wire's size in this loom is from memory."
                        : "Ratings of wires in this loom that are from memory: %s."
                                .formatted(recalled));
    }

    private static String words(ConductorSize size) {
        return size.designation() + " (" + size.rating() + ")";
    }
}
