package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;

import org.loomwright.app.NotFoundException;
import org.loomwright.exchange.CatalogueTables;
import org.loomwright.exchange.CatalogueTables.CatalogueTable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

import java.util.List;
import java.util.Map;

/** The tables that everything is calculated with. */
@RestController
@Tag(name = "Catalogue", description = "The trade's tables, each row with its source and status")
@RequestMapping(path = "/api/catalogue", produces = MediaType.APPLICATION_JSON_VALUE)
class CatalogueController {

    /** A table in the list of tables. */
    @Schema(name = "CatalogueTableSummary")
    record TableLine(
            @Schema(description = "Name of the table.") String table,
            @Schema(description = "What it holds and what has to be known about it.") String note,
            int rows,
            @Schema(description = "Rows with a figure from memory: a default to edit.")
                    long fromMemory) {

        static TableLine of(CatalogueTable table) {
            return new TableLine(
                    table.name(), table.note(), table.rows().size(), table.fromMemory());
        }
    }

    /** A whole table. */
    @Schema(name = "CatalogueTable")
    record TableAnswer(
            String table,
            String note,
            List<String> columns,
            @Schema(description = "Text of each cell by column.") List<Map<String, String>> rows) {

        static TableAnswer of(CatalogueTable table) {
            return new TableAnswer(table.name(), table.note(), table.columns(), table.rows());
        }
    }

    @Operation(operationId = "listCatalogue", summary = "List the tables of the catalogue")
    @GetMapping
    List<TableLine> list() {
        return CatalogueTables.names().stream()
                .map(name -> TableLine.of(CatalogueTables.find(name).orElseThrow()))
                .toList();
    }

    @Operation(
            operationId = "readCatalogueTable",
            summary = "Read a table of the catalogue",
            description =
                    "Status FOUND is published, COMPUTED calculated from published figures, MEMORY"
                            + " recalled: a default to edit. Keys of sources are explained in"
                            + " shared/sources.md.")
    @GetMapping("/{table}")
    TableAnswer get(@PathVariable String table) {
        return CatalogueTables.find(table)
                .map(TableAnswer::of)
                .orElseThrow(() -> new NotFoundException("catalogue table", table));
    }
}
