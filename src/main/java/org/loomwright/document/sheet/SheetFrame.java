package org.loomwright.document.sheet;

import org.loomwright.document.pdf.Canvas;
import org.loomwright.document.pdf.Face;
import org.loomwright.document.pdf.Frame;
import org.loomwright.document.pdf.Paper;
import org.loomwright.document.pdf.TextStyle;

/** Head and foot of every page: whose sheet it is, which revision it stands for, and which page of how many. */
final class SheetFrame implements Frame {

    private static final TextStyle HEAD = TextStyle.of(Face.BOLD, 8);
    private static final TextStyle NUMBER = TextStyle.of(Face.BOLD, 10);
    private static final TextStyle FOOT = TextStyle.of(Face.REGULAR, 7);
    private static final double NAME_SHARE = 0.5;

    private final JobSheet sheet;

    SheetFrame(JobSheet sheet) {
        this.sheet = sheet;
    }

    @Override
    public void draw(Canvas canvas, Paper paper, int page, int pages) {
        double left = paper.leftPt();
        double right = paper.rightPt();
        double head = paper.topPt() - 14;
        String workshop =
                HEAD.spaced(0.6).shortened(sheet.workshop(), paper.bodyWidthPt() * NAME_SHARE);
        canvas.text(workshop, HEAD.spaced(0.6), left, head - 6);
        canvas.textEndingAt(
                "Job sheet · work order " + sheet.workOrderNumber(), NUMBER, right, head - 6);
        doubleRule(canvas, left, right, head);
        double foot = paper.bottomPt() + 14;
        canvas.rule(left, foot, right, foot, 0.6);
        canvas.text(
                "Work order %s · revision %d · printed figures are planning estimates, not a clearance"
                        .formatted(sheet.workOrderNumber(), sheet.revisionNumber()),
                FOOT,
                left,
                foot + 10);
        canvas.text("Content hash " + sheet.revisionHash(), FOOT, left, foot + 19);
        canvas.textEndingAt(
                "Page %d of %d".formatted(page, pages), FOOT.in(Face.BOLD), right, foot + 10);
    }

    private static void doubleRule(Canvas canvas, double left, double right, double y) {
        canvas.rule(left, y, right, y, 1.4);
        canvas.rule(left, y + 2.2, right, y + 2.2, 0.4);
    }
}
