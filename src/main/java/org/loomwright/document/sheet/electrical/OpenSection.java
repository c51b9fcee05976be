package org.loomwright.document.sheet.electrical;

import org.loomwright.core.open.NeededFor;
import org.loomwright.core.open.OpenPoint;
import org.loomwright.core.open.OpenReport;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.content.RuleWords;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How much is said of what the job needs, and what to ask next. */
public final class OpenSection {

    private static final int HEAVIEST = 10;

    private final OpenReport open;

    /**
     * @param open what nobody has said
     */
    public OpenSection(OpenReport open) {
        this.open = open;
    }

    /** Sets the section. */
    public void set(Flow flow) {
        flow.section(Part.OPEN.title());
        flow.text(
                "Said so far: %d %% of what a price needs, %d %% of what the work needs, by the weight of the questions, which is this program's own choice. 100 %% would say that nothing on this program's list is open, and no more."
                        .formatted(open.price().percent(), open.build().percent()));
        questions(flow);
        open.cautions().forEach(flow::bullet);
    }

    private void questions(Flow flow) {
        List<OpenPoint> points = open.points();
        if (points.isEmpty()) {
            flow.text("No question is open.");
            return;
        }
        flow.heading("The heaviest questions");
        Table table =
                new Table(
                        List.of(
                                Column.figures("Weight", 36),
                                Column.words("", 8),
                                Column.words("Needed for", 56),
                                Column.words("What is not said", 176),
                                Column.words("", 6),
                                Column.words("What to ask", 150),
                                Column.words("Why it is expected", 68)));
        points.stream().limit(HEAVIEST).forEach(point -> row(table, point));
        flow.table(table);
        if (points.size() > HEAVIEST) {
            flow.text(rest(points.subList(HEAVIEST, points.size())));
        }
    }

    private static void row(Table table, OpenPoint point) {
        table.row(
                Type.strongFigure(Integer.toString(point.weight())),
                Cell.empty(),
                Type.words(words(point.neededFor())),
                Type.words(point.text()),
                Cell.empty(),
                Type.strong(point.question()),
                basis(point));
    }

    private static String words(NeededFor needed) {
        return switch (needed) {
            case PRICE -> "price";
            case BUILD -> "work";
            case BOTH -> "price, work";
        };
    }

    private static Cell basis(OpenPoint point) {
        return point.basis() == null
                ? Type.words("by the work itself")
                : Type.source(point.basis());
    }

    private static String rest(List<OpenPoint> rest) {
        Map<String, Integer> byRule = new LinkedHashMap<>();
        rest.forEach(point -> byRule.merge(RuleWords.of(point.code()), 1, Integer::sum));
        return "%s, none of them heavier: %s."
                .formatted(
                        Figures.count(
                                rest.size(),
                                "further question is open",
                                "further questions are open"),
                        byRule.entrySet().stream()
                                .map(rule -> rule.getKey() + " " + rule.getValue())
                                .collect(Collectors.joining(", ")));
    }
}
