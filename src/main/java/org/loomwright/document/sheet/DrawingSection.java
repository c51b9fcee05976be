package org.loomwright.document.sheet;

import org.loomwright.document.drawing.Sheet;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Paper;
import org.loomwright.document.pdf.PdfSceneWriter;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.sheet.style.Part;

import java.util.List;

/** The loom to true proportions, on a page of its own. */
final class DrawingSection {

    /** Heading and caption above the drawing. */
    private static final double ABOVE_MM = 15;

    private static final double CAPTION_PT = 16;
    private static final String REDUCED =
            "Drawn for a larger sheet and reduced to fit: only its scale bar holds, not the scale"
                    + " in figures.";
    private static final List<Paper> PAPERS = List.of(Paper.A4, Paper.A4_LANDSCAPE);

    private final JobSheet sheet;

    DrawingSection(JobSheet sheet) {
        this.sheet = sheet;
    }

    void set(Flow flow) {
        Scene scene = sheet.pictures().loom();
        if (scene == null) {
            flow.newPage();
            flow.section(Part.DRAWING.title());
            flow.text("This sheet was made without a drawing.");
            return;
        }
        flow.newPage(smallestFor(scene));
        flow.section(Part.DRAWING.title());
        double scale =
                PdfSceneWriter.scaleToFit(
                        scene, flow.paper().bodyWidthPt(), flow.remainingPt() - CAPTION_PT);
        flow.note(scale < 1 ? scene.title() + ". " + REDUCED : scene.title());
        flow.picture(scene, scale);
        flow.newPage(Paper.A4);
    }

    /** @return the largest drawing that a page of the sheet holds at its own scale */
    static Sheet largest(String title, String footer) {
        return new Sheet(widthMm(Paper.A4_LANDSCAPE), heightMm(Paper.A4_LANDSCAPE), title, footer);
    }

    /** The smallest paper that holds the scene at its own scale; the largest of all if none does. */
    private static Paper smallestFor(Scene scene) {
        return PAPERS.stream()
                .filter(paper -> scene.widthMm() <= widthMm(paper))
                .filter(paper -> scene.heightMm() <= heightMm(paper))
                .findFirst()
                .orElse(PAPERS.getLast());
    }

    private static double widthMm(Paper paper) {
        return Math.floor(paper.bodyWidthPt() / Paper.POINTS_PER_MM);
    }

    private static double heightMm(Paper paper) {
        return Math.floor(paper.bodyHeightPt() / Paper.POINTS_PER_MM - ABOVE_MM);
    }
}
