package org.loomwright.document.pdf;

import org.jspecify.annotations.Nullable;
import org.loomwright.document.scene.Shape.Ink;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands in one field of a table: paragraphs under each other, perhaps with a swatch before the first line.
 *
 * @param parts the paragraphs
 * @param align how they stand in the column
 * @param swatch drawn before them, or null
 */
public record Cell(List<Part> parts, Align align, @Nullable Swatch swatch) {

    static final double SWATCH_WIDTH_PT = 21;
    static final double SWATCH_GAP_PT = 3.5;

    public Cell {
        parts = List.copyOf(parts);
    }

    /** How a text stands in its column. */
    public enum Align {
        LEFT,
        RIGHT,
        CENTRE
    }

    /**
     * One paragraph.
     *
     * @param text its words; a line feed breaks the line
     * @param style its look
     */
    public record Part(String text, TextStyle style) {}

    /**
     * A wire's colour: a box in the body colour with a stripe in the tracer colour. The letters belong beside it, as text.
     *
     * @param body colour of the box
     * @param tracer colour of the stripe, or null for a plain wire
     */
    public record Swatch(Ink body, @Nullable Ink tracer) {}

    /** One line as it will be printed. */
    record Line(String text, TextStyle style) {}

    /** @return words in one style */
    public static Cell of(String text, TextStyle style) {
        return new Cell(List.of(new Part(text, style)), Align.LEFT, null);
    }

    /** @return figures in one style, aligned to the right */
    public static Cell figure(String text, TextStyle style) {
        return new Cell(List.of(new Part(text, style)), Align.RIGHT, null);
    }

    /** @return an empty field */
    public static Cell empty() {
        return new Cell(List.of(), Align.LEFT, null);
    }

    /** @return the same with a further paragraph, or the same if that is empty */
    public Cell then(String text, TextStyle style) {
        if (text.isEmpty()) {
            return this;
        }
        List<Part> longer = new ArrayList<>(parts);
        longer.add(new Part(text, style));
        return new Cell(longer, align, swatch);
    }

    /** @return the same with a swatch */
    public Cell with(Swatch newSwatch) {
        return new Cell(parts, align, newSwatch);
    }

    double indentPt() {
        return swatch == null ? 0 : SWATCH_WIDTH_PT + SWATCH_GAP_PT;
    }

    List<Line> lines(double widthPt) {
        List<Line> lines = new ArrayList<>();
        for (Part part : parts) {
            part.style()
                    .wrap(part.text(), widthPt - indentPt())
                    .forEach(line -> lines.add(new Line(line, part.style())));
        }
        return lines;
    }
}
