package org.loomwright.document.sheet.electrical;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourClash;
import org.loomwright.core.colour.ColourProposal;
import org.loomwright.core.colour.ColourProposal.Choice;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Acceptance;
import org.loomwright.document.sheet.content.Places;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Colours of the new wires with the rule behind each, wires to be tagged, and recorded colours that contradict the code. */
public final class ColoursSection {

    private static final String ACCEPTED = "Accepted, see " + Part.ACCEPTED.reference() + ".";

    private final ChangeAnalysis change;
    private final ElectricalSide side;
    private final Catalogue catalogue;
    private final Acceptance acceptance;

    /**
     * @param change the stock loom beside the amended one
     * @param side its electrical side
     */
    public ColoursSection(ChangeAnalysis change, ElectricalSide side) {
        this.change = change;
        this.side = side;
        this.catalogue = change.after().loom().document().coloured(side.basis().catalogue());
        this.acceptance = side.acceptance();
    }

    /** Sets the section. */
    public void set(Flow flow) {
        flow.section(Part.COLOURS.title());
        flow.text(
                "A colour is a help to the eye, not a proof: find every wire with a meter before it"
                        + " is cut or joined. Where the vehicle had another scheme, its own scheme"
                        + " comes first.");
        added(flow);
        clashes(flow);
        audit(flow);
    }

    private void added(Flow flow) {
        List<Wire> wires = NewWires.added(change);
        flow.heading("New wires");
        if (wires.isEmpty()) {
            flow.text("No wire is new.");
            return;
        }
        Map<Judged, List<String>> alike = new LinkedHashMap<>();
        wires.forEach(
                wire -> alike.computeIfAbsent(judged(wire), j -> new ArrayList<>()).add(wire.id()));
        Table table =
                new Table(
                        List.of(
                                Column.words("Wires", 90),
                                Column.words("Ordered colour", 86),
                                Column.words("The rule that leads to it", 146),
                                Column.words("", 6),
                                Column.words("Where it comes from", 80),
                                Column.words("", 6),
                                Column.words("Against the code", 88)));
        alike.forEach((judged, ids) -> added(table, judged, ids));
        flow.table(table);
    }

    /** What is said of a new wire's colour, the same for many wires. */
    private record Judged(
            WireColour colour,
            @Nullable Choice choice,
            @Nullable WireColour better,
            boolean isAccepted,
            boolean isInNoList) {}

    private Judged judged(Wire wire) {
        ColourProposal proposal = side.colours().proposals().get(wire.id());
        if (proposal == null) {
            return new Judged(wire.colour(), null, null, false, isInNoList(wire));
        }
        Optional<Finding> differs = said(wire, "colour.new-differs");
        return new Judged(
                wire.colour(),
                choice(proposal, wire),
                differs.isPresent() ? proposal.colour() : null,
                differs.filter(acceptance::covers).isPresent(),
                isInNoList(wire));
    }

    private boolean isInNoList(Wire wire) {
        return said(wire, "colour.not-in-code").isPresent()
                || said(wire, "colour.custom").isPresent();
    }

    private Optional<Finding> said(Wire wire, String rule) {
        return side.colours().differing().stream()
                .filter(finding -> finding.code().equals(rule))
                .filter(finding -> finding.subject().id().equals(wire.id()))
                .findFirst();
    }

    private void added(Table table, Judged judged, List<String> wires) {
        Choice choice = judged.choice();
        table.row(
                Type.strong(String.join(", ", wires)),
                Type.colour(judged.colour(), catalogue),
                Type.words(choice == null ? "nothing leads to a colour" : choice.reason()),
                Cell.empty(),
                Type.source(choice == null ? null : choice.provenance()),
                Cell.empty(),
                judged.isInNoList()
                        ? verdict(judged).then("IN NO LIST: say it in words", Type.STRONG)
                        : verdict(judged));
    }

    /** The choice that the wire's own colour is, or the first where it is none. */
    private static Choice choice(ColourProposal proposal, Wire wire) {
        return Stream.concat(Stream.of(proposal.best()), proposal.alternatives().stream())
                .filter(one -> one.colour().equals(wire.colour()))
                .filter(one -> proposal.isRight(wire.colour()))
                .findFirst()
                .orElse(proposal.best());
    }

    private Cell verdict(Judged judged) {
        WireColour better = judged.better();
        if (judged.choice() == null) {
            return Type.words("not judged");
        }
        if (better == null) {
            return Type.words(judged.isInNoList() ? "as proposed" : "as the code");
        }
        Cell cell =
                Type.colour(better, catalogue)
                        .then("DIFFERS: the code would have this", Type.STRONG);
        return judged.isAccepted() ? cell.then(ACCEPTED, Type.STRONG) : cell;
    }

    private void clashes(Flow flow) {
        List<ColourClash> clashes = side.colours().clashes();
        flow.heading("Wires to be tagged: one colour at one place, and not joined");
        if (clashes.isEmpty()) {
            flow.text("None found.");
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("Where they leave the loom", 170),
                                Column.words("Colour", 100),
                                Column.words("Tag each of", 228)));
        for (ColourClash clash : clashes) {
            Cell wires = Type.strong(String.join(", ", clash.wires()));
            Subject subject = Subject.of(ThingKind.NODE, clash.node());
            table.row(
                    place(clash),
                    Type.colour(clash.colour(), catalogue),
                    acceptance.covers(Finding.warning("colour.clash", subject, ""))
                            ? wires.then(ACCEPTED, Type.STRONG)
                            : wires);
        }
        flow.table(table);
    }

    private Cell place(ColourClash clash) {
        Loom loom = change.after().loom();
        return Type.strong(clash.node()).then(Places.node(loom, clash.node()), Type.CELL);
    }

    private void audit(Flow flow) {
        List<Finding> audit = side.colours().audit();
        flow.heading("Recorded wires whose colour contradicts their feed or what they do");
        if (audit.isEmpty()) {
            flow.text("None found. That does not say that every wire is what its colour says.");
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("Weight", 48),
                                Column.words("Wire", 44),
                                Column.words("Recorded as", 92),
                                Column.words("Finding", 314)));
        audit.forEach(finding -> audit(table, finding));
        flow.table(table);
    }

    private void audit(Table table, Finding finding) {
        Wire wire = change.before().loom().wires().get(finding.subject().id());
        Cell text = Type.words(finding.text());
        table.row(
                Type.strong(finding.severity().name()),
                Type.strong(finding.subject().id()),
                wire == null ? Type.words("–") : Type.colour(wire.colour(), catalogue),
                acceptance.covers(finding) ? text.then(ACCEPTED, Type.STRONG) : text);
    }
}
