package org.loomwright.app;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.bundle.PackingWork;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.difference.LoomDifference;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.springframework.stereotype.Component;

import java.util.List;

/**
 * Proves, amends and analyses looms with the program's catalogue and its one bundle packer, which remembers what it has packed.
 * Nothing here touches a store.
 */
@Component
public class Analyses {

    private final Tables tables;
    private final Catalogue catalogue;
    private final BundlePacker packer;

    Analyses(Tables tables, BundlePacker packer) {
        this.tables = tables;
        this.catalogue = tables.printed().catalogue();
        this.packer = packer;
    }

    /**
     * A stock loom, what was amended, and what that means.
     *
     * @param amended the amended loom with the origin of its parts
     * @param amendments what was amended, in order
     * @param settings what was calculated with
     * @param analysis what it means
     */
    public record Amended(
            AmendedLoom amended,
            List<Amendment> amendments,
            AnalysisSettings settings,
            ChangeAnalysis analysis) {

        public Amended {
            amendments = List.copyOf(amendments);
        }

        /** @return in what the amended loom differs from the stock loom */
        public LoomDifference difference() {
            return LoomDifference.between(analysis.before().loom(), analysis.after().loom());
        }
    }

    /** @return the catalogue with the own figures of these settings */
    public Catalogue catalogue(AnalysisSettings settings) {
        return tables.with(settings).catalogue();
    }

    /** @return the catalogue that everything refers to, as it is printed */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** @return the proven loom, or every fault */
    public Outcome<Loom> prove(LoomDocument document) {
        return LoomChecker.check(document, catalogue);
    }

    /**
     * @param document a document that was proven when it was stored
     * @return the loom
     * @throws IllegalStateException if it does not hold any more, which takes a catalogue that lost a row
     */
    public Loom proven(LoomDocument document) {
        return prove(document)
                .orElseThrow(
                        reasons ->
                                new IllegalStateException(
                                        "a stored loom does not hold any more: " + reasons));
    }

    /**
     * @return the analysis of one loom
     * @throws TooMuchWorkException if its bundles cannot be packed while somebody waits
     */
    public LoomAnalysis analyse(Loom loom, AnalysisSettings settings) {
        if (PackingWork.of(loom, settings.effort()).isTooMuch()) {
            throw TooMuchWorkException.ofPacking(loom.name());
        }
        return LoomAnalysis.of(loom, settings, catalogue(settings), packer);
    }

    /** @return the amended loom alone, or all reasons why not; nothing is packed for it */
    public Outcome<AmendedLoom> apply(Loom stock, List<Amendment> amendments) {
        return Amendments.apply(stock, amendments, catalogue);
    }

    /** @return the amended loom and its analysis beside the stock loom's, or all reasons why not */
    public Outcome<Amended> amend(
            Loom stock, List<Amendment> amendments, AnalysisSettings settings) {
        return apply(stock, amendments)
                .map(
                        amended ->
                                new Amended(
                                        amended,
                                        amendments,
                                        settings,
                                        compare(stock, amended, settings)));
    }

    private ChangeAnalysis compare(Loom stock, AmendedLoom amended, AnalysisSettings settings) {
        return ChangeAnalysis.of(
                analyse(stock, settings),
                analyse(amended.loom(), settings),
                amended.recordedSegments(stock),
                catalogue(settings));
    }
}
