package org.loomwright.document.sheet.content;

import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.core.catalogue.Covering;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.routing.TakeUp;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What the figures of a sheet rest on: the settings, and which of the catalogue's figures nobody has read anywhere. */
public final class Footing {

    private final AnalysisSettings settings;
    private final Catalogue catalogue;
    private final Loom stock;
    private final Loom loom;

    /**
     * @param settings what was set before the analysis
     * @param catalogue the tables that were used
     * @param stock the loom as it was recorded
     * @param loom the amended loom
     */
    public Footing(AnalysisSettings settings, Catalogue catalogue, Loom stock, Loom loom) {
        this.stock = stock;
        this.settings = settings;
        this.catalogue = catalogue;
        this.loom = loom;
    }

    /** @return one sentence or two for each thing that matters */
    public List<String> sentences() {
        List<String> found = new ArrayList<>();
        found.add(cutting());
        found.add(
                "Laid diameter = tight diameter × %s from seven wires on, × 1 below; covered = laid + twice the covering's wall."
                        .formatted(settings.layFactor().fromSeven()));
        add(
                found,
                ownFigures(),
                "Set by the workshop in the place of the catalogue's figures: %s.");
        add(
                found,
                sizesFromMemory(),
                "Outside diameters from memory: %s. Measure before ordering.");
        add(found, terminalsFromMemory(), "Termination lengths from memory: %s. Try one first.");
        add(found, coverings(Status.MEMORY), "Covering walls from memory: %s.");
        add(found, coverings(Status.COMPUTED), "Covering walls calculated: %s.");
        add(
                found,
                assumedFinishes(),
                "Covering assumed, nobody has looked, on segments: %s. Look before it is"
                        + " stripped.");
        return found;
    }

    private String cutting() {
        String takeUp =
                switch (settings.allowances().takeUp()) {
                    case TakeUp.Given given ->
                            "take-up %s of the measured way"
                                    .formatted(Figures.percent(given.ratio()));
                    case TakeUp.FromLay lay ->
                            "take-up computed from a lay of %s times the diameter and the bends"
                                    .formatted(lay.layMultiple());
                };
        return "Cut length: %s, reserve to make each end again %s, rounded up to whole steps of %s."
                .formatted(
                        takeUp,
                        Figures.count(settings.allowances().reTerminations(), "time", "times"),
                        settings.allowances().step());
    }

    private static void add(List<String> found, TreeSet<String> names, String sentence) {
        if (!names.isEmpty()) {
            found.add(sentence.formatted(String.join(", ", names)));
        }
    }

    private TreeSet<String> ownFigures() {
        TreeSet<String> figures = new TreeSet<>();
        for (CatalogueOverride own : settings.overrides()) {
            figures.add("%s %s (%s)".formatted(own.words(), own.value(), own.note()));
        }
        return figures;
    }

    private TreeSet<String> sizesFromMemory() {
        TreeSet<String> names = new TreeSet<>();
        for (Wire wire : loom.wires().values()) {
            if (catalogue.getSize(wire.size()).diameterProvenance().status() == Status.MEMORY) {
                names.add(wire.size());
            }
        }
        return names;
    }

    private TreeSet<String> terminalsFromMemory() {
        TreeSet<String> names = new TreeSet<>();
        for (Wire wire : loom.wires().values()) {
            for (String code : List.of(wire.a().terminal(), wire.b().terminal())) {
                var terminal = catalogue.getTerminal(code);
                if (terminal.provenance().status() == Status.MEMORY) {
                    names.add(terminal.name());
                }
            }
        }
        return names;
    }

    private TreeSet<String> coverings(Status status) {
        TreeSet<String> names = new TreeSet<>();
        for (var segment : loom.segments().values()) {
            Covering covering = catalogue.getCovering(segment.finish().covering());
            if (covering.wall().isPositive() && covering.provenance().status() == status) {
                names.add(
                        status == Status.COMPUTED
                                ? covering.name() + " (" + covering.provenance().source() + ")"
                                : covering.name());
            }
        }
        return names;
    }

    private TreeSet<String> assumedFinishes() {
        TreeSet<String> names = new TreeSet<>();
        for (var segment : stock.segments().values()) {
            if (segment.finish().evidence().kind() == EvidenceKind.ASSUMED) {
                names.add(segment.id());
            }
        }
        return names;
    }
}
