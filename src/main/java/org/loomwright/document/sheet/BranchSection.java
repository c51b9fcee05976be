package org.loomwright.document.sheet;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.bundle.OpeningChecks;
import org.loomwright.core.bundle.SegmentBundle;
import org.loomwright.core.bundle.WireCounts;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.AmendmentWords;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.content.Places;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.List;
import java.util.SortedMap;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.Function;

/** Every segment of the amended loom: length, covering, wires, thickness before and after, and what it must pass through. */
final class BranchSection {

    private static final String NBSP = "\u00a0";

    private final JobSheet sheet;
    private final Loom loom;
    private final AmendmentWords words;
    private final OpeningChecks checks;

    BranchSection(JobSheet sheet) {
        this.sheet = sheet;
        this.loom = sheet.change().after().loom();
        this.words = new AmendmentWords(sheet.change().before().loom(), loom, sheet.catalogue());
        this.checks = new OpeningChecks(sheet.catalogue());
    }

    void set(Flow flow) {
        flow.section(Part.BRANCHES.title());
        flow.text(
                "Diameters in millimetres, rounded up to 0.1 mm: tight is the smallest circle found"
                    + " round the bare wires, laid as it should measure tied, covered as it must"
                    + " pass. Before is the stock loom.");
        Table table =
                new Table(
                        List.of(
                                Column.words("Segment, covering", 158),
                                Column.figures("Length\nmm", 38),
                                Column.words("Wires by colour and by size", 142),
                                Column.words("", 38),
                                Column.figures("Wires", 30),
                                Column.figures("Tight\nmm", 34),
                                Column.figures("Laid\nmm", 34),
                                Column.figures("Covered\nmm", 40)));
        sheet.change().segments().forEach(change -> row(table, change));
        flow.table(table);
        gone(flow);
    }

    private void gone(Flow flow) {
        if (sheet.change().gone().isEmpty()) {
            return;
        }
        flow.heading("Segments that are taken away");
        for (SegmentBundle bundle : sheet.change().gone()) {
            flow.bullet(
                    "%s, %s: %s long, %s, covered %s mm"
                            .formatted(
                                    bundle.segment().id(),
                                    Places.run(sheet.change().before().loom(), bundle.segment()),
                                    bundle.segment().length(),
                                    Figures.count(bundle.counts().total(), "wire", "wires"),
                                    Figures.tenthsMm(bundle.covered())));
        }
    }

    private void row(Table table, SegmentChange change) {
        Segment segment = change.after().segment();
        table.row(
                covering(segment, change.before()),
                length(segment, change.before()),
                Type.words(list(change.after().counts().byColour()))
                        .then(list(change.after().counts().bySize()), Type.CELL)
                        .then(difference("added", change.added()), Type.STRONG)
                        .then(difference("removed", change.removed()), Type.STRONG),
                Cell.of(change.before() == null ? "new" : "before", Type.CELL)
                        .then("after", Type.STRONG),
                both(change, bundle -> Integer.toString(bundle.counts().total())),
                both(change, bundle -> diameter(bundle, bundle.tight())),
                both(change, bundle -> diameter(bundle, bundle.laid())),
                both(change, bundle -> diameter(bundle, bundle.covered())));
        segment.openings().forEach(opening -> table.under(opening(opening, change)));
    }

    private Cell covering(Segment segment, @Nullable SegmentBundle before) {
        Cell cell =
                Type.strong(segment.id() + "  " + Places.run(loom, segment))
                        .then(words.finish(segment.finish()), Type.CELL);
        if (before != null && !before.segment().finish().equals(segment.finish())) {
            cell = cell.then("was " + words.finish(before.segment().finish()), Type.STRONG);
        }
        return cell.then("Seen: " + AmendmentWords.evidence(segment.finish()), Type.SMALL);
    }

    private static Cell length(Segment segment, @Nullable SegmentBundle before) {
        boolean sameRun =
                before != null
                        && before.segment().from().equals(segment.from())
                        && before.segment().to().equals(segment.to());
        Cell cell = Type.figure(Figures.exactMm(segment.length()));
        return before != null && sameRun && !before.segment().length().equals(segment.length())
                ? cell.then("was " + Figures.exactMm(before.segment().length()), Type.STRONG)
                : cell;
    }

    private static Cell both(SegmentChange change, Function<SegmentBundle, String> figure) {
        String before = change.before() == null ? "–" : figure.apply(change.before());
        return Cell.figure(before, Type.CELL).then(figure.apply(change.after()), Type.STRONG);
    }

    private static String diameter(SegmentBundle bundle, Length diameter) {
        return bundle.counts().total() == 0 ? "–" : Figures.tenthsMm(diameter);
    }

    private static String list(SortedMap<String, Integer> counts) {
        if (counts.isEmpty()) {
            return "no wires";
        }
        StringJoiner joiner = new StringJoiner(", ");
        counts.forEach(
                (what, count) -> joiner.add(count + NBSP + "×" + NBSP + what.replace(" ", NBSP)));
        return joiner.toString();
    }

    private static String difference(String what, WireCounts counts) {
        SortedMap<String, Integer> named = new TreeMap<>();
        counts.byClass()
                .forEach((kind, count) -> named.put(kind.colour() + " " + kind.size(), count));
        return named.isEmpty() ? "" : what + ": " + list(named);
    }

    private Cell opening(Opening opening, SegmentChange change) {
        boolean passes = OpeningChecks.passes(opening, change.after());
        String verdict =
                passes
                        ? "passes"
                        : passed(opening, change.before()) ? "NO LONGER PASSES" : "DOES NOT PASS";
        String text =
                "Opening %s, %s “%s”, at %s: clear %s, covered %s mm: %s.%s"
                        .formatted(
                                opening.id(),
                                opening.kind().words(),
                                opening.name(),
                                opening.position(),
                                opening.clearDiameter(),
                                diameter(change.after(), change.after().covered()),
                                verdict,
                                passes
                                        ? ""
                                        : " "
                                                + checks.whatWouldFit(
                                                        opening, change.after().covered()));
        return Cell.of(text, passes ? Type.CELL : Type.STRONG);
    }

    private static boolean passed(Opening opening, @Nullable SegmentBundle before) {
        return before != null && OpeningChecks.passes(opening, before);
    }
}
