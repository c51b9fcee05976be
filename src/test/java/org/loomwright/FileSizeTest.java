package org.loomwright;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A file fits a screen or two; beyond 400 lines of code it has swallowed a second one. */
class FileSizeTest {

    private static final int MOST = 400;

    @Test
    void noSourceFileHasMoreThanFourHundredLinesOfCode() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
            assertThat(sources)
                    .isNotEmpty()
                    .allSatisfy(
                            file ->
                                    assertThat(linesOfCode(file))
                                            .as(file.toString())
                                            .isLessThanOrEqualTo(MOST));
        }
    }

    private static long linesOfCode(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .filter(line -> !line.startsWith("*") && !line.startsWith("/"))
                    .filter(line -> !line.startsWith("import ") && !line.startsWith("package "))
                    .count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
