package org.loomwright.document.sheet.electrical;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.colour.ColourClash;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.open.OpenPoint;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.RuleWords;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.ArrayList;
import java.util.List;

/** What the customer has seen and takes as it is, beside what is found today. */
public final class AcceptedSection {

    private static final List<String> NOT_LOOKED_AT = List.of("period.", "kit.");

    /** Title, introduction and a finding in three states, which must not be parted. */
    private static final double HEAD_WITH_A_TALL_ROW_PT = 270;

    private final ChangeAnalysis change;
    private final ElectricalSide side;

    /**
     * @param change the stock loom beside the amended one
     * @param side its electrical side, with what was accepted
     */
    public AcceptedSection(ChangeAnalysis change, ElectricalSide side) {
        this.change = change;
        this.side = side;
    }

    /** Sets the section. */
    public void set(Flow flow) {
        if (!side.accepted().isEmpty()) {
            flow.makeRoom(HEAD_WITH_A_TALL_ROW_PT);
        }
        flow.section(Part.ACCEPTED.title());
        if (side.accepted().isEmpty()) {
            flow.text("The customer has accepted no finding.");
            return;
        }
        flow.text(
                "Frozen with the revision, in the customer's words. An accepted finding is no less"
                        + " true: what it says must be known to whoever does the work.");
        Table table =
                new Table(
                        List.of(
                                Column.words("Accepted", 130),
                                Column.words("What is found now", 228),
                                Column.words("Why it is accepted", 140)));
        List<Finding> found = found();
        side.accepted().forEach(one -> row(table, one, found));
        flow.table(table);
    }

    /** Everything that a person may have accepted and that this sheet looks at. */
    private List<Finding> found() {
        List<Finding> found = new ArrayList<>(change.findings());
        found.addAll(side.report().plainFindings());
        found.addAll(side.colours().differing());
        found.addAll(side.colours().audit());
        side.colours().clashes().stream().map(this::finding).forEach(found::add);
        side.open().points().stream().map(AcceptedSection::finding).forEach(found::add);
        return found;
    }

    private Finding finding(ColourClash clash) {
        return Finding.warning(
                "colour.clash",
                Subject.of(ThingKind.NODE, clash.node()),
                "Wires %s are all %s and leave the loom at one place, but are not joined."
                        .formatted(String.join(", ", clash.wires()), clash.colour().letters()));
    }

    private static Finding finding(OpenPoint point) {
        return new Finding(point.code(), Severity.NOTE, point.subject(), point.text());
    }

    private static void row(Table table, AcceptedFinding one, List<Finding> found) {
        String thing = one.id().isEmpty() ? "" : " " + one.id();
        table.row(
                Type.strong(RuleWords.of(one.code()))
                        .then(one.kind().words() + thing, Type.CELL)
                        .then(one.code(), Type.SMALL),
                now(one, found),
                Type.words(one.reason()));
    }

    private static Cell now(AcceptedFinding one, List<Finding> found) {
        List<Finding> same = found.stream().filter(one::isAbout).toList();
        if (same.isEmpty()) {
            return Type.strong(
                    isLookedAt(one)
                            ? "This finding does not occur any more."
                            : "Not looked at on this sheet.");
        }
        Cell cell = Cell.empty();
        for (Finding finding : same) {
            cell =
                    cell.then(finding.severity().name(), Type.STRONG)
                            .then(finding.text(), Type.CELL);
        }
        return cell;
    }

    private static boolean isLookedAt(AcceptedFinding one) {
        return NOT_LOOKED_AT.stream().noneMatch(one.code()::startsWith);
    }
}
