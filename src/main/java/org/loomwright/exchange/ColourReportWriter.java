package org.loomwright.exchange;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourClash;
import org.loomwright.core.colour.ColourProposal;
import org.loomwright.core.colour.ColourReport;
import org.loomwright.core.colour.code.ColourWords;
import org.loomwright.core.loom.Loom;

import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

import java.util.Map;

/** Writes what is to be said about colours as JSON, in the order of the report. */
public final class ColourReportWriter {

    private final Loom loom;
    private final Catalogue catalogue;

    /**
     * @param loom the loom that the reports are about
     * @param catalogue names of the colours
     */
    public ColourReportWriter(Loom loom, Catalogue catalogue) {
        this.loom = loom;
        this.catalogue = loom.document().coloured(catalogue);
    }

    /**
     * @param report what is to be said
     * @return it as JSON
     */
    public ObjectNode write(ColourReport report) {
        ObjectNode json = JsonParts.object();
        json.set("proposals", JsonParts.array(report.proposals().entrySet(), this::proposal));
        json.set("differing", AnalysisWriter.findings(report.differing()));
        json.set("clashes", JsonParts.array(report.clashes(), this::clash));
        json.set("audit", AnalysisWriter.findings(report.audit()));
        return json;
    }

    private ObjectNode proposal(Map.Entry<String, ColourProposal> entry) {
        ColourProposal proposal = entry.getValue();
        WireColour has = loom.getWire(entry.getKey()).colour();
        ObjectNode json = JsonParts.object();
        json.put("wire", entry.getKey());
        json.put("has", has.letters());
        json.put("isRight", proposal.isRight(has));
        json.set("best", choice(proposal.best()));
        ArrayNode alternatives = JsonParts.array(proposal.alternatives(), this::choice);
        json.set("alternatives", alternatives);
        return json;
    }

    private ObjectNode choice(ColourProposal.Choice choice) {
        return JsonParts.object()
                .put("colour", choice.colour().letters())
                .put("words", ColourWords.of(choice.colour(), catalogue))
                .put("rule", choice.reason())
                .put("status", choice.provenance().status().words())
                .put("source", choice.provenance().source());
    }

    private ObjectNode clash(ColourClash clash) {
        ObjectNode json = JsonParts.object();
        json.put("node", clash.node());
        json.put("colour", clash.colour().letters());
        json.put("words", ColourWords.of(clash.colour(), catalogue));
        json.set("wires", JsonParts.texts(clash.wires()));
        return json;
    }
}
