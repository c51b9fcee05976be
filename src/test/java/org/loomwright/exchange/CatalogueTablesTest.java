package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.exchange.CatalogueTables.CatalogueTable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

class CatalogueTablesTest {

    @Test
    void everyFileOfTheFolderIsATable() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("shared", "catalogue"))) {
            List<String> names =
                    files.map(file -> file.getFileName().toString().replace(".csv", ""))
                            .sorted()
                            .toList();
            assertThat(CatalogueTables.names()).isEqualTo(names);
        }
    }

    @Test
    void countsWhatIsFromMemory() {
        CatalogueTable colours = CatalogueTables.find("colours").orElseThrow();
        assertThat(colours.fromMemory()).isPositive().isLessThan(colours.rows().size());
        assertThat(CatalogueTables.find("bundle-factors").orElseThrow().fromMemory()).isZero();
    }

    @Test
    void aTableThatIsNotThereIsNotFound() {
        assertThat(CatalogueTables.find("../../application")).isEmpty();
        assertThat(CatalogueTables.find("nothing")).isEmpty();
    }
}
