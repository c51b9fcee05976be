package org.loomwright.core.geometry.packing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Rows of a comma-separated file under {@code reference/packing}, without comments and heading. */
final class ReferenceFile {

    private ReferenceFile() {}

    static List<String[]> rows(String name) {
        String path = "/reference/packing/" + name;
        try (InputStream in =
                Objects.requireNonNull(ReferenceFile.class.getResourceAsStream(path), path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
