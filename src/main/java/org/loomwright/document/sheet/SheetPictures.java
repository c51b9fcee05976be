package org.loomwright.document.sheet;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.document.drawing.CrossSectionDrawing;
import org.loomwright.document.drawing.Detail;
import org.loomwright.document.drawing.LoomDrawing;
import org.loomwright.document.scene.Scene;

import java.util.ArrayList;
import java.util.List;

/**
 * The drawings of a job sheet.
 *
 * @param loom the amended loom to true proportions, or null for a sheet without it
 * @param branches cross-sections of the branches that change, in walking order
 */
public record SheetPictures(@Nullable Scene loom, List<BranchPicture> branches) {

    /** No drawings. */
    public static final SheetPictures NONE = new SheetPictures(null, List.of());

    public SheetPictures {
        branches = List.copyOf(branches);
    }

    /**
     * @param change the stock loom beside the amended one
     * @param catalogue the tables that both refer to
     * @param footer a line for the drawing's foot: revision and content hash
     * @return the amended loom, drawn as large as the sheet's largest paper allows, and the branches that change
     */
    public static SheetPictures of(ChangeAnalysis change, Catalogue catalogue, String footer) {
        Catalogue coloured = change.after().loom().document().coloured(catalogue);
        String title = change.after().loom().name() + ", with the additions";
        List<BranchPicture> branches = new ArrayList<>();
        for (SegmentChange segment : change.segments()) {
            if (segment.isChanged()) {
                Scene cut = CrossSectionDrawing.of(segment, coloured);
                branches.add(new BranchPicture(segment.segment(), cut));
            }
        }
        return new SheetPictures(
                LoomDrawing.of(change, DrawingSection.largest(title, footer), Detail.BRANCHES),
                branches);
    }

    /**
     * The cut through one branch.
     *
     * @param segment its id in the amended loom
     * @param scene before beside after, or only after for a new branch
     */
    public record BranchPicture(String segment, Scene scene) {}
}
