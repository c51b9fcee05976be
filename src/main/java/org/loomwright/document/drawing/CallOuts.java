package org.loomwright.document.drawing;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.layout.label.LabelSpace;
import org.loomwright.document.drawing.TextBlock.Row;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;

import java.util.ArrayList;
import java.util.List;

/** The last resort for texts that find no place near what they name: a number there and the text in a list. */
final class CallOuts {

    private static final double RADIUS_MM = 1.4;
    private static final double SIZE_MM = 1.8;

    private final Pen pen;
    private final LabelSpace space;
    private final List<CallOut> waiting = new ArrayList<>();

    private record CallOut(Point at, List<String> text) {}

    CallOuts(Pen pen, LabelSpace space) {
        this.pen = pen;
        this.space = space;
    }

    void add(Point at, List<String> text) {
        waiting.add(new CallOut(at, text));
    }

    int count() {
        return waiting.size();
    }

    /**
     * Writes the list where there is room, and the numbers of what is in the list.
     *
     * @return how many found no room; say so on the sheet, so that nobody misses them unknowingly
     */
    int writeList() {
        int number = 0;
        for (CallOut callOut : waiting) {
            if (write(block(number + 1, callOut.text()))) {
                number++;
                mark(number, callOut.at());
            }
        }
        return waiting.size() - number;
    }

    private void mark(int number, Point at) {
        pen.add(new Shape.Disc(at, RADIUS_MM, Ink.PAPER, Stroke.full(Ink.BLACK, 0.2)));
        pen.text(
                Integer.toString(number),
                at.xMm(),
                at.yMm() + SIZE_MM * 0.35,
                SIZE_MM,
                true,
                Anchor.MIDDLE,
                Ink.BLACK);
    }

    private static TextBlock block(int number, List<String> texts) {
        List<Row> rows = new ArrayList<>();
        for (String text : texts) {
            String lead = rows.isEmpty() ? number + " = " : "      ";
            rows.add(new Row(lead + text, SIZE_MM, false, Ink.BLACK));
        }
        return new TextBlock(rows);
    }

    private boolean write(TextBlock block) {
        var place = space.placeAnywhere(Pen.length(block.widthMm()), Pen.length(block.heightMm()));
        place.ifPresent(box -> block.write(pen, box, corner(box)));
        return place.isPresent();
    }

    private static Point corner(Rectangle box) {
        return new Point(box.leftMm(), box.topMm());
    }
}
