package org.loomwright.document.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.document.pdf.PdfPages;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The text of the demonstration's sheet beside the committed one. The bytes are not committed, because compression may differ from
 * one Java to the next. After a change that is meant, read {@code target/demo-job-sheet.txt} and commit it in its place.
 */
class JobSheetPdfReferenceTest {

    private static final String REFERENCE = "demo-job-sheet.txt";

    @Test
    void theDemonstrationsSheetReadsAsCommitted() throws IOException {
        List<String> pages =
                PdfPages.texts(JobSheetPdf.write(TestJobs.withoutPictures(DemoJob.sheet())));
        String text = String.join("\n\n", pages).replaceAll("(.{80,100}) ", "$1\n") + "\n";
        Files.writeString(Path.of("target", REFERENCE), text);

        assertThat(text).isEqualTo(reference());
    }

    private static String reference() throws IOException {
        try (InputStream stream = JobSheetPdfReferenceTest.class.getResourceAsStream(REFERENCE)) {
            return stream == null
                    ? "no reference is committed"
                    : new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
