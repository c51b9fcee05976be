package org.loomwright.document.sheet;

import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Paper;
import org.loomwright.document.pdf.PdfSceneWriter;
import org.loomwright.document.scene.Scene;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The loom to true proportions, on a page of its own. */
final class DrawingSection {

    private static final double CAPTION_PT = 60;

    private final JobSheet sheet;

    DrawingSection(JobSheet sheet) {
        this.sheet = sheet;
    }

    void set(Flow flow) {
        Scene scene = sheet.pictures().loom();
        if (scene == null) {
            flow.newPage();
            flow.section("2  Loom drawing");
            flow.text("This sheet was made without a drawing.");
            return;
        }
        boolean wide = scene.widthMm() > scene.heightMm();
        flow.newPage(wide ? Paper.A4_LANDSCAPE : Paper.A4);
        flow.section("2  Loom drawing");
        double scale =
                PdfSceneWriter.scaleToFit(
                        scene, flow.paper().bodyWidthPt(), flow.remainingPt() - CAPTION_PT);
        flow.note(caption(scene, scale));
        flow.picture(scene, scale);
        flow.newPage(Paper.A4);
    }

    private static String caption(Scene scene, double scale) {
        String printed =
                scale >= 1
                        ? "Printed as drawn."
                        : "Reduced to %s % of the drawing's own sheet."
                                .replace("%s", percent(scale));
        return scene.title() + ". " + printed;
    }

    private static String percent(double scale) {
        return BigDecimal.valueOf(scale * 100).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
