package org.loomwright.document.sheet.electrical;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.CheckedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Acceptance;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.content.RuleWords;
import org.loomwright.document.sheet.content.Tally;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Faults and warnings one by one, notes by rule. */
final class FindingTables {

    private static final String NBSP = "\u00a0";
    private static final String TIMES = NBSP + "×" + NBSP;

    /** So many notes of one rule are printed in full; of more, one stands for all. */
    private static final int FEW = 6;

    private final List<ElectricalFinding> findings;
    private final Acceptance acceptance;

    FindingTables(ElectricalSide side) {
        this.findings = side.report().findings().stream().map(CheckedFinding::finding).toList();
        this.acceptance = side.acceptance();
    }

    void set(Flow flow) {
        List<Finding> plain = findings.stream().map(ElectricalFinding::finding).toList();
        flow.heading("Electrical findings: " + Tally.of(plain, acceptance));
        if (findings.isEmpty()) {
            flow.text(
                    "None. That is not a clearance; it says only that no rule of this program was"
                            + " broken.");
            return;
        }
        grave(flow, findings.stream().filter(one -> !isNote(one)).toList());
        notes(flow, findings.stream().filter(FindingTables::isNote).toList());
    }

    private static boolean isNote(ElectricalFinding finding) {
        return finding.finding().severity() == Severity.NOTE;
    }

    private void grave(Flow flow, List<ElectricalFinding> grave) {
        if (grave.isEmpty()) {
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("Weight", 48),
                                Column.words("Finding, and what would put it right", 308),
                                Column.figures("Figure\nLimit\nMargin", 54),
                                Column.words("", 8),
                                Column.words("Where the limit\ncomes from", 78)));
        grave.forEach(one -> row(table, one));
        flow.table(table);
    }

    private void row(Table table, ElectricalFinding one) {
        table.row(
                Type.strong(one.finding().severity().name()),
                text(one),
                figures(one),
                Cell.empty(),
                Type.source(one.source()));
    }

    private Cell text(ElectricalFinding one) {
        Cell cell = Type.words(one.finding().text());
        if (acceptance.covers(one.finding())) {
            return cell.then("Accepted, see " + Part.ACCEPTED.reference() + ".", Type.STRONG);
        }
        return one.remedy().isEmpty()
                ? cell
                : cell.then("To put it right: " + one.remedy(), Type.ASIDE);
    }

    private static Cell figures(ElectricalFinding one) {
        if (one.figure() == null) {
            return Type.figure("–");
        }
        Cell cell = Type.strongFigure(Figures.words(one.figure()));
        return one.limit() == null
                ? cell.then("no limit", Type.SMALL)
                : cell.then(Figures.words(one.limit()), Type.CELL)
                        .then(one.margin().map(Figures::words).orElse(""), Type.CELL);
    }

    private void notes(Flow flow, List<ElectricalFinding> notes) {
        if (notes.isEmpty()) {
            return;
        }
        flow.heading("Notes, by rule");
        Map<String, List<ElectricalFinding>> byRule = new TreeMap<>();
        notes.forEach(
                note ->
                        byRule.computeIfAbsent(note.finding().code(), c -> new ArrayList<>())
                                .add(note));
        Table table =
                new Table(
                        List.of(
                                Column.words("Rule", 104),
                                Column.figures("Notes", 32),
                                Column.words("", 8),
                                Column.words("About, with the figure of each", 276),
                                Column.words("Where limits\ncome from", 78)));
        byRule.forEach((code, ofRule) -> row(table, code, ofRule));
        flow.table(table);
    }

    private void row(Table table, String code, List<ElectricalFinding> notes) {
        table.row(
                Type.strong(RuleWords.of(code)),
                Type.strongFigure(Integer.toString(notes.size())),
                Cell.empty(),
                Type.words(things(notes)),
                sources(notes));
        table.under(notes.size() <= FEW ? texts(notes) : example(notes.getFirst()));
    }

    private static Cell example(ElectricalFinding note) {
        return Cell.of("For example: " + note.finding().text(), Type.ASIDE);
    }

    private static Cell texts(List<ElectricalFinding> notes) {
        Cell cell = Cell.empty();
        for (ElectricalFinding note : notes) {
            cell = cell.then(note.finding().text(), Type.ASIDE);
        }
        return cell;
    }

    private String things(List<ElectricalFinding> notes) {
        Map<String, Integer> things = new LinkedHashMap<>();
        notes.forEach(note -> things.merge(thing(note), 1, Integer::sum));
        return things.entrySet().stream()
                .map(one -> one.getKey() + (one.getValue() == 1 ? "" : TIMES + one.getValue()))
                .collect(Collectors.joining(", "));
    }

    private String thing(ElectricalFinding note) {
        String id = note.finding().subject().id();
        String figure =
                note.figure() == null ? "" : NBSP + "(" + Figures.words(note.figure()) + ")";
        String accepted =
                acceptance.covers(note.finding())
                        ? " accepted, see " + Part.ACCEPTED.reference()
                        : "";
        return (id.isEmpty() ? note.finding().subject().words() : id) + figure + accepted;
    }

    private static Cell sources(List<ElectricalFinding> notes) {
        List<Provenance> sources = new ArrayList<>();
        for (ElectricalFinding note : notes) {
            if (note.source() != null && !sources.contains(note.source())) {
                sources.add(note.source());
            }
        }
        if (sources.isEmpty()) {
            return Type.words("–");
        }
        Cell cell = Cell.empty();
        for (Provenance source : sources) {
            cell = cell.then(source.inWords(), Type.isRecalled(source) ? Type.STRONG : Type.CELL);
        }
        return cell;
    }
}
