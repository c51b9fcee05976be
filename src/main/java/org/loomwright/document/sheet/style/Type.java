package org.loomwright.document.sheet;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Cell.Swatch;
import org.loomwright.document.pdf.Face;
import org.loomwright.document.pdf.TextStyle;
import org.loomwright.document.scene.Shape.Ink;

/** The few sizes of type that the sheet is set in, and the cells that come again and again. */
final class Type {

    static final TextStyle CELL = TextStyle.of(Face.REGULAR, 7.8);
    static final TextStyle STRONG = TextStyle.of(Face.BOLD, 7.8);
    static final TextStyle SMALL = TextStyle.of(Face.REGULAR, 6.8);
    static final TextStyle ASIDE = TextStyle.of(Face.ITALIC, 7.2);
    static final TextStyle TEXT = TextStyle.of(Face.REGULAR, 8.6);
    static final TextStyle TEXT_STRONG = TextStyle.of(Face.BOLD, 8.6);

    private Type() {}

    static Cell words(String text) {
        return Cell.of(text, CELL);
    }

    static Cell strong(String text) {
        return Cell.of(text, STRONG);
    }

    static Cell figure(String text) {
        return Cell.figure(text, CELL);
    }

    static Cell strongFigure(String text) {
        return Cell.figure(text, STRONG);
    }

    /** Letters beside a swatch, with the colour in words below. */
    static Cell colour(WireColour colour, Catalogue catalogue) {
        return Cell.of(colour.letters(), STRONG)
                .with(swatch(colour, catalogue))
                .then(colourWords(colour, catalogue), SMALL);
    }

    static Swatch swatch(WireColour colour, Catalogue catalogue) {
        String tracer = colour.tracer();
        return new Swatch(
                ink(colour.body(), catalogue), tracer == null ? null : ink(tracer, catalogue));
    }

    static String colourWords(WireColour colour, Catalogue catalogue) {
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
