package org.loomwright.core.layout.label;

import org.loomwright.core.quantity.Length;

import java.util.Arrays;

/**
 * How wide a line of text becomes in Liberation Sans, without having the font at hand: never less than it really is.
 *
 * <p>Source: own measurement, advance widths of Liberation Sans as shipped in openpdf-fonts-extra 3.0.5, in thousandths of the font
 * size, rounded up by one; {@code TextWidthTest} measures them again. Other characters count as one whole font size, which no Latin
 * one exceeds.
 */
public final class TextWidth {

    private static final int FIRST = ' ';
    private static final int OTHER = 1000;
    private static final int[] REGULAR =
            table(
                    """
                    277 277 354 556 556 889 666 190 333 333 389 583 277 333 277 277 556 556 556 556
                    556 556 556 556 556 556 277 277 583 583 583 556 1015 666 666 722 722 666 610 777
                    722 277 500 666 556 833 722 777 666 777 722 666 610 722 666 943 666 666 610 277
                    277 277 469 556 333 556 556 500 556 556 277 556 556 222 222 500 222 833 556 556
                    556 556 333 500 277 556 500 722 500 500 500 333 259 333 583
                    """);
    private static final int[] BOLD =
            table(
                    """
                    277 333 474 556 556 889 722 237 333 333 389 583 277 333 277 277 556 556 556 556
                    556 556 556 556 556 556 333 333 583 583 583 610 975 722 722 722 722 666 610 777
                    722 277 556 722 610 833 722 777 666 777 722 666 610 722 666 943 666 666 610 333
                    277 333 583 556 333 556 610 556 610 556 333 610 610 277 277 556 277 889 610 610
                    610 610 389 556 333 610 556 777 556 556 500 389 279 389 583
                    """);

    private TextWidth() {}

    /**
     * @param text one line
     * @param size height of the font (its em)
     * @param bold whether in the bold face
     * @return at least its width
     */
    public static Length of(String text, Length size, boolean bold) {
        int[] table = bold ? BOLD : REGULAR;
        long thousandths =
                text.codePoints()
                        .map(
                                character ->
                                        character >= FIRST && character < FIRST + table.length
                                                ? table[character - FIRST] + 1
                                                : OTHER)
                        .sum();
        return Length.ofMicrometres(Math.ceilDiv(size.micrometres() * thousandths, 1000));
    }

    private static int[] table(String rows) {
        return Arrays.stream(rows.strip().split("\\s+")).mapToInt(Integer::parseInt).toArray();
    }
}
