package org.loomwright.document.sheet;

import org.loomwright.document.pdf.Face;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Tag;
import org.loomwright.document.pdf.TextStyle;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.sheet.style.Part;

/** Boxes to tick and to sign, large enough for a hand that has just tied a loom. */
final class SignOffSection {

    private static final TextStyle STAGE = TextStyle.of(Face.BOLD, 10);
    private static final TextStyle LABEL = TextStyle.of(Face.REGULAR, 7);
    private static final double ROW_PT = 43;
    private static final double HOLD_PT = 56;
    private static final double TICK_PT = 20;
    private static final double REMARK_LINE_PT = 22;
    private static final int REMARK_LINES = 5;
    private static final double WHOLE_PT =
            6 * ROW_PT + HOLD_PT + REMARK_LINES * REMARK_LINE_PT + 70;

    private SignOffSection() {}

    static void set(Flow flow) {
        flow.makeRoom(WHOLE_PT);
        flow.section(Part.SIGN_OFF.title());
        stage(flow, "Received and counted", "wires, branches and parts agree with this sheet");
        stage(
                flow,
                "Bare loom checked on the board",
                "lengths, colours, counts, both ends of every wire");
        holdPoint(flow);
        stage(flow, "Covered", "coverings, lacquer, openings tried");
        stage(flow, "Terminated", "terminals, insulators, pull test");
        stage(flow, "Tested", "continuity, isolation, polarity; readings kept");
        stage(flow, "Dispatched", "packed, sheet and readings enclosed");
        remarks(flow);
    }

    private static void stage(Flow flow, String title, String what) {
        flow.makeRoom(ROW_PT);
        row(flow, title, what, flow.take(ROW_PT), ROW_PT, Ink.PAPER);
    }

    private static void holdPoint(Flow flow) {
        flow.makeRoom(HOLD_PT);
        row(
                flow,
                "HOLD POINT: customer's approval",
                "photographs of the bare, tied loom sent; no covering before approval",
                flow.take(HOLD_PT),
                HOLD_PT,
                new Ink("#e9e7e1"));
    }

    private static void row(
            Flow flow, String title, String what, double top, double height, Ink fill) {
        double left = flow.paper().leftPt();
        double width = flow.paper().bodyWidthPt();
        double weight = fill.equals(Ink.PAPER) ? 0.5 : 2;
        Tag tag = flow.section().child(Tag.Role.PARAGRAPH);
        flow.page()
                .add(
                        tag,
                        canvas -> {
                            canvas.box(left, top + 2, width, height - 4, fill, weight);
                            canvas.box(
                                    left + 10,
                                    top + (height - TICK_PT) / 2,
                                    TICK_PT,
                                    TICK_PT,
                                    Ink.PAPER,
                                    1.2);
                            double text = left + 42;
                            canvas.text(title, STAGE, text, top + height / 2 - 1);
                            canvas.text(what, LABEL, text, top + height / 2 + 10);
                            double line = top + height - 13;
                            canvas.text("Name", LABEL, left + width * 0.56, line);
                            canvas.dotted(left + width * 0.61, left + width * 0.8, line + 1);
                            canvas.text("Date", LABEL, left + width * 0.82, line);
                            canvas.dotted(left + width * 0.865, left + width - 8, line + 1);
                        });
    }

    private static void remarks(Flow flow) {
        flow.makeRoom(REMARK_LINE_PT * REMARK_LINES);
        flow.space(4);
        flow.heading("As made: what is other than on this sheet, measured diameters, remarks");
        for (int i = 0; i < REMARK_LINES && flow.remainingPt() > REMARK_LINE_PT; i++) {
            double y = flow.take(REMARK_LINE_PT) + REMARK_LINE_PT;
            double left = flow.paper().leftPt();
            double right = flow.paper().rightPt();
            flow.page().decorate(canvas -> canvas.dotted(left, right, y));
        }
    }
}
