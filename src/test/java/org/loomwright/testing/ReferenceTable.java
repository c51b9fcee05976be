package org.loomwright.testing;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/** Reads published figures from {@code src/test/resources/reference}; each file says in comments where its rows come from. */
public final class ReferenceTable {

    private ReferenceTable() {}

    /**
     * @param file name below {@code reference}
     * @param row reads one row
     * @return all rows
     */
    public static <T> List<T> rows(String file, Function<CSVRecord, T> row) {
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .setCommentMarker('#')
                        .get();
        InputStream stream = ReferenceTable.class.getResourceAsStream("/reference/" + file);
        if (stream == null) {
            throw new IllegalArgumentException("there is no reference/" + file);
        }
        try (InputStreamReader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
                var parser = format.parse(reader)) {
            return parser.stream().map(row).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
