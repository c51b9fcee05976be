package org.loomwright.document.sheet;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Loom;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Paper;
import org.loomwright.document.pdf.PdfSceneWriter;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.sheet.SheetPictures.BranchPicture;
import org.loomwright.document.sheet.content.Places;

/** The branches that change, cut through: before on the left, after on the right. */
final class CrossSectionsSection {

    private static final double GAP_PT = 12;
    private static final double CAPTION_PT = 30;

    private final JobSheet sheet;

    CrossSectionsSection(JobSheet sheet) {
        this.sheet = sheet;
    }

    void set(Flow flow) {
        flow.section("6  Bundle cross-sections of the branches that change");
        flow.text(
                "What must fit, seen from the datum: before on the left, after on the right, both"
                        + " to one scale. Wires need not lie in these places.");
        if (sheet.pictures().branches().isEmpty()) {
            flow.text("No cross-sections are shown on this sheet.");
        }
        sheet.pictures().branches().forEach(branch -> set(flow, branch));
    }

    private void set(Flow flow, BranchPicture branch) {
        Loom loom = sheet.change().after().loom();
        double half = (flow.paper().bodyWidthPt() - GAP_PT) / 2;
        double scale = scale(branch.after(), half, flow);
        if (branch.before() != null) {
            scale = Math.min(scale, scale(branch.before(), half, flow));
        }
        double height = Math.max(heightPt(branch.before(), scale), heightPt(branch.after(), scale));
        flow.makeRoom(height + CAPTION_PT);
        flow.heading("Segment " + Places.segment(loom, branch.segment()));
        double top = flow.take(height + 6);
        double left = flow.paper().leftPt();
        if (branch.before() == null) {
            flow.pictureAt(branch.after(), scale, left + half + GAP_PT, top);
        } else {
            flow.pictureAt(branch.before(), scale, left, top);
            flow.pictureAt(branch.after(), scale, left + half + GAP_PT, top);
        }
    }

    private static double scale(Scene scene, double width, Flow flow) {
        return PdfSceneWriter.scaleToFit(scene, width, flow.paper().bodyHeightPt() / 2.5);
    }

    private static double heightPt(@Nullable Scene scene, double scale) {
        return scene == null ? 0 : scene.heightMm() * scale * Paper.POINTS_PER_MM;
    }
}
