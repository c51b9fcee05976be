package org.loomwright.document.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.nio.file.Files;
import java.nio.file.Path;

class JobSheetPdfTest {

    @Test
    void look() throws Exception {
        Path folder = Files.createDirectories(Path.of("target/sheets"));
        Files.write(folder.resolve("spot.pdf"), JobSheetPdf.write(TestJobs.spotLamps()));
        Files.write(folder.resolve("spot2.pdf"), JobSheetPdf.write(TestJobs.spotLamps()));
        Files.write(
                folder.resolve("crowd.pdf"), JobSheetPdf.write(TestJobs.crowd(300, "fog lamps")));
        for (int i = 0; i < 8; i++) {
            long start = System.nanoTime();
            JobSheet demo = DemoJob.sheet();
            long mid = System.nanoTime();
            Files.write(folder.resolve("demo.pdf"), JobSheetPdf.write(demo));
            System.out.println((mid - start) / 1e6 + " ms, pdf " + (System.nanoTime() - mid) / 1e6);
        }
        assertThat(JobSheetPdf.write(TestJobs.nothing())).isNotEmpty();
    }
}
