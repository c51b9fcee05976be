package org.loomwright.document.sheet;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.document.drawing.LoomDrawing;
import org.loomwright.document.scene.Scene;

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
     * @param footer a line for the drawing's foot: revision and content hash
     * @return the amended loom, drawn as large as the sheet's largest paper allows
     */
    public static SheetPictures of(ChangeAnalysis change, String footer) {
        String title = change.after().loom().name() + ", with the additions";
        return new SheetPictures(
                LoomDrawing.of(change, DrawingSection.largest(title, footer)), List.of());
    }

    /**
     * One branch before and after, both to the same scale.
     *
     * @param segment its id in the amended loom
     * @param before its cross-section in the stock loom, or null for a new branch
     * @param after its cross-section now
     */
    public record BranchPicture(String segment, @Nullable Scene before, Scene after) {}
}
