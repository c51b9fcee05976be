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
    private final List<List<String>> texts = new ArrayList<>();

    CallOuts(Pen pen, LabelSpace space) {
        this.pen = pen;
        this.space = space;
    }

    void add(Point at, List<String> text) {
        texts.add(text);
        pen.add(new Shape.Disc(at, RADIUS_MM, Ink.PAPER, Stroke.full(Ink.BLACK, 0.2)));
        pen.text(
                Integer.toString(texts.size()),
                at.xMm(),
                at.yMm() + SIZE_MM * 0.35,
                SIZE_MM,
                true,
                Anchor.MIDDLE,
                Ink.BLACK);
    }

    int count() {
        return texts.size();
    }

    /** Writes the list where there is room; what finds none is counted on the sheet, so nobody misses it unknowingly. */
    void writeList() {
        int missing = 0;
        for (int i = 0; i < texts.size(); i++) {
            TextBlock block = block(i + 1, texts.get(i));
            missing += write(block) ? 0 : 1;
        }
        if (missing > 0) {
            write(
                    new TextBlock(
                            List.of(
                                    new Row(
                                            missing + " names find no room: take a larger sheet",
                                            SIZE_MM,
                                            true,
                                            Pen.ACCENT))));
        }
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
