package org.loomwright.document.pdf;

import org.openpdf.text.DocumentException;
import org.openpdf.text.pdf.BaseFont;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The one type family of all documents, in its three cuts; each is embedded with the glyphs that a document uses. */
public enum Face {
    /** Upright. */
    REGULAR("LiberationSans-Regular.ttf"),
    /** Bold. */
    BOLD("LiberationSans-Bold.ttf"),
    /** Italic. */
    ITALIC("LiberationSans-Italic.ttf");

    private static final String FOLDER = "/liberation/";
    private static final String SUBSTITUTE = "?";

    private final BaseFont font;

    Face(String file) {
        font = load(file);
    }

    private static BaseFont load(String file) {
        try (InputStream stream = BaseFont.class.getResourceAsStream(FOLDER + file)) {
            if (stream == null) {
                throw new IllegalStateException("the font " + FOLDER + file + " is missing");
            }
            byte[] bytes = stream.readAllBytes();
            return BaseFont.createFont(
                    file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, bytes, null);
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + FOLDER + file + " cannot be read", e);
        } catch (DocumentException e) {
            throw new IllegalStateException("the font " + FOLDER + file + " is damaged", e);
        }
    }

    BaseFont font() {
        return font;
    }

    double widthOf(String text, double sizePt) {
        return font.getWidthPoint(text, (float) sizePt);
    }

    /**
     * The text with everything that the font cannot show replaced by a question mark, so that nothing vanishes unseen. Only control
     * and format characters go without a trace: they show nothing, but could turn the text round.
     */
    String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.codePoints()
                .filter(c -> c >= ' ' && Character.getType(c) != Character.FORMAT)
                .forEach(
                        c -> {
                            if (font.charExists(c)) {
                                printable.appendCodePoint(c);
                            } else {
                                printable.append(SUBSTITUTE);
                            }
                        });
        return printable.toString();
    }
}
