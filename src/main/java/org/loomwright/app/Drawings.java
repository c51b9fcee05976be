package org.loomwright.app;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.bundle.SegmentBundle;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.loom.Loom;
import org.loomwright.document.drawing.CrossSectionDrawing;
import org.loomwright.document.drawing.LoomDrawing;
import org.loomwright.document.drawing.Sheet;
import org.loomwright.document.scene.Scene;
import org.springframework.stereotype.Component;

/** Draws looms and bundles with the program's catalogue. */
@Component
public class Drawings {

    private static final int HASH_SHOWN = 16;

    private final Analyses analyses;

    Drawings(Analyses analyses) {
        this.analyses = analyses;
    }

    /**
     * @param loom an analysed loom
     * @param hash names its content
     * @return the loom on an A3 sheet
     */
    public Scene loom(LoomAnalysis loom, String hash) {
        return LoomDrawing.of(loom, Sheet.a3(loom.loom().name(), "content " + shortened(hash)));
    }

    /**
     * @param change a stock loom beside the amended one
     * @param footer which state of which specification it shows
     * @return the amended loom on an A3 sheet
     */
    public Scene change(ChangeAnalysis change, String footer) {
        return LoomDrawing.of(change, Sheet.a3(change.after().loom().name(), footer));
    }

    /**
     * @param loom an analysed loom
     * @param segment id of a segment
     * @return its cross-section
     * @throws NotFoundException if the loom has no such segment
     */
    public Scene crossSection(LoomAnalysis loom, String segment) {
        SegmentBundle bundle = loom.bundles().bySegment().get(segment);
        if (bundle == null) {
            throw new NotFoundException("segment", segment);
        }
        return CrossSectionDrawing.of(bundle, catalogue(loom.loom()));
    }

    /**
     * @param change a stock loom beside the amended one
     * @param segment id of a segment of the amended loom
     * @return its cross-section before and after
     * @throws NotFoundException if the amended loom has no such segment
     */
    public Scene crossSection(ChangeAnalysis change, String segment) {
        return change.segments().stream()
                .filter(candidate -> candidate.segment().equals(segment))
                .findFirst()
                .map(found -> CrossSectionDrawing.of(found, catalogue(change.after().loom())))
                .orElseThrow(() -> new NotFoundException("segment", segment));
    }

    /** With the colours that only this loom has. */
    private Catalogue catalogue(Loom loom) {
        return loom.document().coloured(analyses.catalogue());
    }

    /** @return the first digits of a hash, for the eye */
    static String shortened(String hash) {
        return hash.substring(0, Math.min(HASH_SHOWN, hash.length()));
    }
}
