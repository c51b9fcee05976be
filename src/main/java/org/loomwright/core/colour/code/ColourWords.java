package org.loomwright.core.colour.code;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;

/** Colours in words, so that nobody depends on seeing them: {@code GN} is green with brown tracer. */
public final class ColourWords {

    private static final String WITH = " with ";
    private static final String TRACER = " tracer";

    private ColourWords() {}

    /** @return the colour in words, for example {@code green with brown tracer}; letters that the catalogue lacks stay letters */
    public static String of(WireColour colour, Catalogue catalogue) {
        String body = name(colour.body(), catalogue);
        String tracer = colour.tracer();
        return tracer == null ? body : body + WITH + name(tracer, catalogue) + TRACER;
    }

    /** @return letters and words, for example {@code GN (green with brown tracer)} */
    public static String withLetters(WireColour colour, Catalogue catalogue) {
        return "%s (%s)".formatted(colour.letters(), of(colour, catalogue));
    }

    private static String name(String letters, Catalogue catalogue) {
        return catalogue.findColour(letters).map(BaseColour::name).orElse(letters);
    }
}
