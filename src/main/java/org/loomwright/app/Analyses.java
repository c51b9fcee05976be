package org.loomwright.app;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.amendment.Origin;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.difference.LoomDifference;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.springframework.stereotype.Component;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Proves, amends and analyses looms with the program's catalogue and its one bundle packer, which remembers what it has packed.
 * Nothing here touches a store.
 */
@Component
public class Analyses {

    private final Catalogue catalogue;
    private final BundlePacker packer;

    Analyses(Catalogue catalogue, BundlePacker packer) {
        this.catalogue = catalogue;
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

    /** @return the catalogue that everything refers to */
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

    /** @return the analysis of one loom */
    public LoomAnalysis analyse(Loom loom, AnalysisSettings settings) {
        return LoomAnalysis.of(loom, settings, catalogue, packer);
    }

    /** @return the amended loom and its analysis beside the stock loom's, or all reasons why not */
    public Outcome<Amended> amend(
            Loom stock, List<Amendment> amendments, AnalysisSettings settings) {
        return Amendments.apply(stock, amendments, catalogue)
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
                recorded(stock, amended),
                catalogue);
    }

    /** For each segment that is, or was cut from, a stock segment: which one. */
    private static Map<String, String> recorded(Loom stock, AmendedLoom amended) {
        Map<String, String> recorded = new LinkedHashMap<>();
        for (String segment : amended.loom().segments().keySet()) {
            String whole = amended.piece(segment).recorded().id();
            if (stock.segments().containsKey(whole) && !wasAdded(amended, whole)) {
                recorded.put(segment, whole);
            }
        }
        return recorded;
    }

    private static boolean wasAdded(AmendedLoom amended, String segment) {
        return amended.origin(ThingKind.SEGMENT, segment)
                        instanceof Origin.ByAmendment(Origin.Act act, List<String> by)
                && act == Origin.Act.ADDED;
    }
}
