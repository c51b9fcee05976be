package org.loomwright.core.layout.label;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.quantity.Length;
import org.openpdf.text.pdf.BaseFont;

import java.io.IOException;
import java.io.InputStream;

class TextWidthTest {

    private static final Length ONE_METRE = Length.ofMillimetres(1000);

    @ParameterizedTest
    @CsvSource({"LiberationSans-Regular,false", "LiberationSans-Bold,true"})
    void neverUnderstatesACharacterAndHardlyOverstatesAPlainOne(String face, boolean bold)
            throws IOException {
        BaseFont font = font(face);
        for (char character = ' '; character < 0x180; character++) {
            if (character >= 0x7f && character < 0xa0) {
                continue;
            }
            long real = font.getWidth(character);
            Length told = TextWidth.of(String.valueOf(character), ONE_METRE, bold);
            assertThat(told)
                    .as("'%s'", character)
                    .isGreaterThanOrEqualTo(Length.ofMillimetres(real));
            if (character < 0x7f) {
                assertThat(told).isLessThanOrEqualTo(Length.ofMillimetres(real + 1));
            }
        }
    }

    private static BaseFont font(String face) throws IOException {
        try (InputStream stream =
                TextWidthTest.class.getResourceAsStream("/liberation/" + face + ".ttf")) {
            if (stream == null) {
                throw new IllegalStateException(face + " is missing");
            }
            return BaseFont.createFont(
                    face + ".ttf",
                    BaseFont.IDENTITY_H,
                    BaseFont.EMBEDDED,
                    false,
                    stream.readAllBytes(),
                    null);
        }
    }
}
