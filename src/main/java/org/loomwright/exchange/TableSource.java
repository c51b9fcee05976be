package org.loomwright.exchange;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;

/** Where the text of a table comes from. */
interface TableSource {

    /** The tables as they are printed, from the class path. */
    TableSource PRINTED = TableSource::printed;

    /**
     * @param file name of the table's file, for example {@code terminals.csv}
     * @return its text, to be closed by the reader
     */
    Reader open(String file);

    private static Reader printed(String file) {
        InputStream stream = TableSource.class.getResourceAsStream(CatalogueFiles.FOLDER + file);
        if (stream == null) {
            throw new IllegalStateException(
                    "the table " + CatalogueFiles.FOLDER + file + " is missing");
        }
        return new InputStreamReader(stream, StandardCharsets.UTF_8);
    }
}
