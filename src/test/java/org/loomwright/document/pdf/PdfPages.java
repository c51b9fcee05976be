package org.loomwright.document.pdf;

import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.parser.PdfTextExtractor;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads a PDF file back. */
public final class PdfPages {

    private PdfPages() {}

    /** @return the file, opened */
    public static PdfReader open(byte[] file) {
        try {
            return new PdfReader(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Renames what decorates a page, which the library's extractor would leave out. */
    private static void readDecorationsToo(PdfReader reader, int page) throws IOException {
        String content = new String(reader.getPageContent(page), StandardCharsets.ISO_8859_1);
        reader.setPageContent(
                page, content.replace("/Artifact", "/P").getBytes(StandardCharsets.ISO_8859_1));
    }

    /** @return the text of each page with its head and foot, in the order of drawing, every run of blanks and line ends as one space */
    public static List<String> texts(byte[] file) {
        PdfReader reader = open(file);
        PdfTextExtractor extractor = new PdfTextExtractor(reader);
        List<String> texts = new ArrayList<>();
        try {
            for (int page = 1; page <= reader.getNumberOfPages(); page++) {
                readDecorationsToo(reader, page);
                texts.add(extractor.getTextFromPage(page).replaceAll("[\\s\\u00a0]+", " "));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    /** @return all text without any blanks, so that line breaks do not matter */
    public static String solid(byte[] file) {
        return String.join("", texts(file)).replace(" ", "");
    }
}
