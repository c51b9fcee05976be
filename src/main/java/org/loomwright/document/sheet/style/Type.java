package org.loomwright.document.sheet.style;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Cell.Swatch;
import org.loomwright.document.pdf.Face;
import org.loomwright.document.pdf.TextStyle;
import org.loomwright.document.scene.Shape.Ink;

/** The few sizes of type that the sheet is set in, and the cells that come again and again. */
public final class Type {

    /** Usual text of a table. */
    public static final TextStyle CELL = TextStyle.of(Face.REGULAR, 7.8);

    /** Text of a table that stands out. */
    public static final TextStyle STRONG = TextStyle.of(Face.BOLD, 7.8);

    /** What is said by the way in a table. */
    public static final TextStyle SMALL = TextStyle.of(Face.REGULAR, 6.8);

    /** Reasons in a table. */
    public static final TextStyle ASIDE = TextStyle.of(Face.ITALIC, 7.2);

    /** Running text. */
    public static final TextStyle TEXT = TextStyle.of(Face.REGULAR, 8.6);

    /** Running text that stands out. */
    public static final TextStyle TEXT_STRONG = TextStyle.of(Face.BOLD, 8.6);

    private Type() {}

    /** @return plain words */
    public static Cell words(String text) {
        return Cell.of(text, CELL);
    }

    /** @return words that stand out */
    public static Cell strong(String text) {
        return Cell.of(text, STRONG);
    }

    /** @return a figure */
    public static Cell figure(String text) {
        return Cell.figure(text, CELL);
    }

    /** @return a figure that stands out */
    public static Cell strongFigure(String text) {
        return Cell.figure(text, STRONG);
    }

    /** @return where a figure comes from; what is from memory stands out */
    public static Cell source(@Nullable Provenance source) {
        return source == null
                ? words("–")
                : Cell.of(source.inWords(), isRecalled(source) ? STRONG : CELL);
    }

    /** @return whether nothing was read for a figure, so that it must stand out */
    public static boolean isRecalled(Provenance source) {
        return source.status() == Status.MEMORY;
    }

    /** @return letters beside a swatch, with the colour in words below */
    public static Cell colour(WireColour colour, Catalogue catalogue) {
        return Cell.of(colour.letters(), STRONG)
                .with(swatch(colour, catalogue))
                .then(colourWords(colour, catalogue), SMALL);
    }

    /** @return the colour to look at */
    public static Swatch swatch(WireColour colour, Catalogue catalogue) {
        String tracer = colour.tracer();
        return new Swatch(
                ink(colour.body(), catalogue), tracer == null ? null : ink(tracer, catalogue));
    }

    /** @return the colour in words */
    public static String colourWords(WireColour colour, Catalogue catalogue) {
        String body = name(colour.body(), catalogue);
        String tracer = colour.tracer();
        return tracer == null ? body : body + " with " + name(tracer, catalogue);
    }

    private static Ink ink(String letters, Catalogue catalogue) {
        return catalogue.findColour(letters).map(c -> new Ink(c.swatch())).orElse(Ink.PAPER);
    }

    private static String name(String letters, Catalogue catalogue) {
        return catalogue.findColour(letters).map(BaseColour::name).orElse(letters);
    }
}
