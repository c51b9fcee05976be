package org.loomwright.document.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Random;

class TextStyleTest {

    private static final TextStyle STYLE = TextStyle.of(Face.REGULAR, 8);

    @Test
    void theFontHasEveryGlyphOfTheTrade() {
        String glyphs = "²°Ø×–Ω−µ±“”→…";

        for (Face face : Face.values()) {
            assertThat(face.printable(glyphs)).isEqualTo(glyphs);
        }
    }

    @Test
    void aGlyphThatTheFontLacksIsShownAsAQuestionMarkAndNotLost() {
        assertThat(STYLE.wrap("lamp \u4e2d left", 500)).containsExactly("lamp ? left");
    }

    @Test
    void aFormatCharacterThatWouldTurnTheTextRoundIsDropped() {
        assertThat(STYLE.wrap("lamp\u202e left\u200b", 500)).containsExactly("lamp left");
    }

    @Test
    void aTextTooLongForItsLineEndsInAnEllipsis() {
        String name = "Tenter Lane Loom Works ".repeat(9).strip();
        String shortened = STYLE.shortened(name, 200);

        assertThat(shortened).startsWith("Tenter Lane Loom Works").endsWith("\u2026");
        assertThat(STYLE.widthOf(shortened)).isLessThanOrEqualTo(200);
        assertThat(STYLE.shortened("Tenter Lane", 200)).isEqualTo("Tenter Lane");
    }

    @Test
    void aLineFeedBreaks() {
        assertThat(STYLE.wrap("one\ntwo", 500)).containsExactly("one", "two");
    }

    @Test
    void anEmptyTextIsOneEmptyLine() {
        assertThat(STYLE.wrap("", 50)).containsExactly("");
    }

    @Test
    void noLineIsWiderThanItsColumnAndNoLetterIsLost() {
        Random random = new Random(11);
        for (int round = 0; round < 500; round++) {
            String text = words(random);
            double width = 20 + random.nextInt(200);

            List<String> lines = STYLE.spaced(random.nextInt(2)).wrap(text, width);

            assertThat(lines).allMatch(line -> STYLE.widthOf(line) <= width || line.length() == 1);
            assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
        }
    }

    private static String words(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(12); i >= 0; i--) {
            for (int j = random.nextInt(40); j >= 0; j--) {
                text.append((char) ('a' + random.nextInt(26)));
            }
            text.append(' ');
        }
        return text.toString();
    }
}
