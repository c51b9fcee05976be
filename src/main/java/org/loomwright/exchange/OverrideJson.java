package org.loomwright.exchange;

import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.exchange.CatalogueTables.CatalogueTable;
import org.loomwright.exchange.FigureTable.Figure;

import tools.jackson.databind.node.ArrayNode;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a workshop's own figures, with every reason why one cannot stand in the place of a printed one, and writes them. */
final class OverrideJson {

    private static final String FIELD = "overrides";
    private static final int MOST = 200;
    private static final int LONGEST_NOTE = 200;

    /** Enough for every figure of the tables; anything longer is not a figure. */
    private static final Pattern DECIMAL = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?");

    /** Own choice: a figure that differs more than so many times from the printed one is taken for a slip. */
    private static final BigDecimal MOST_TIMES = BigDecimal.TEN;

    private OverrideJson() {}

    /** One override with its place, for faults that only the whole list shows. */
    private record Placed(JsonThing json, CatalogueOverride override) {}

    /** @return the overrides of these settings; those that cannot stand are noted as faults and left out */
    static List<CatalogueOverride> read(JsonThing settings) {
        List<Placed> allowed = new ArrayList<>();
        settings.listIfAny(FIELD, ThingKind.SETTINGS, json -> read(json, allowed));
        List<CatalogueOverride> overrides = allowed.stream().map(Placed::override).toList();
        if (overrides.size() > MOST) {
            settings.fault(
                    "settings.out-of-range", FIELD, "must have at most " + MOST + " entries");
        } else if (!canBeLoaded(overrides)) {
            refuseWhatTheTablesRefuse(settings, allowed);
        }
        return overrides;
    }

    private static CatalogueOverride read(JsonThing json, List<Placed> allowed) {
        int before = json.faultCount();
        CatalogueOverride override =
                new CatalogueOverride(
                        json.text("table"),
                        json.text("row"),
                        json.text("column"),
                        json.text("value"),
                        json.line("note", LONGEST_NOTE));
        json.refuseOthers();
        if (json.faultCount() == before) {
            check(override, allowed, json);
        }
        if (json.faultCount() == before) {
            allowed.add(new Placed(json, override));
        }
        return override;
    }

    /** Two figures may only stand together, so each alone is tried only where all of them do not stand. */
    private static void refuseWhatTheTablesRefuse(JsonThing settings, List<Placed> allowed) {
        List<Placed> refused =
                allowed.stream().filter(one -> !canBeLoaded(List.of(one.override()))).toList();
        refused.forEach(
                one ->
                        one.json()
                                .fault(
                                        "settings.override-value",
                                        "value",
                                        "contradicts another figure of the tables"));
        if (refused.isEmpty()) {
            settings.fault("settings.override-value", FIELD, "contradict each other");
        }
    }

    private static void check(CatalogueOverride override, List<Placed> earlier, JsonThing json) {
        Optional<FigureTable> table = FigureTable.find(override.table());
        if (table.isEmpty()) {
            json.fault(
                    "settings.override-table-unknown",
                    "table",
                    "must be a table with figures: " + FigureTable.names());
            return;
        }
        Optional<Map<String, String>> row = findRow(table.get(), override.row());
        Optional<Figure> figure = table.get().findFigure(override.column());
        if (row.isEmpty()) {
            json.fault("settings.override-row-unknown", "row", "is not a row of that table");
        }
        if (figure.isEmpty()) {
            json.fault(
                    "settings.override-column-unknown",
                    "column",
                    "is not a column with figures of that table");
        }
        if (row.isPresent() && figure.isPresent()) {
            checkCell(override, figure.get(), row.get(), json);
        }
        if (earlier.stream().anyMatch(one -> one.override().isOfSameFigureAs(override))) {
            json.fault("settings.override-twice", "", "sets a figure that is set above already");
        }
    }

    private static Optional<Map<String, String>> findRow(FigureTable table, String name) {
        CatalogueTable printed = CatalogueTables.find(table.table()).orElseThrow();
        return printed.rows().stream().filter(row -> table.nameOf(row).equals(name)).findFirst();
    }

    private static void checkCell(
            CatalogueOverride override, Figure figure, Map<String, String> row, JsonThing json) {
        String printed = row.getOrDefault(figure.column(), "");
        if (printed.isEmpty()) {
            json.fault("settings.override-column-unknown", "column", "is empty in that row");
        } else if (Status.FOUND.name().equals(row.get(figure.status()))) {
            json.fault(
                    "settings.override-published",
                    "column",
                    "holds a published figure in that row; only others can be set");
        } else if (!DECIMAL.matcher(override.value()).matches()) {
            json.fault("settings.override-value", "value", "must be a plain decimal number");
        } else if (!isRecalledAsNothing(row, figure) && !isNear(override.value(), printed)) {
            json.fault(
                    "settings.override-value",
                    "value",
                    "must be at least a tenth and at most ten times " + printed);
        }
    }

    /** Nothing has no multiples: any figure may stand for one from memory, none for one by definition. */
    private static boolean isRecalledAsNothing(Map<String, String> row, Figure figure) {
        return new BigDecimal(row.getOrDefault(figure.column(), "")).signum() == 0
                && Status.MEMORY.name().equals(row.get(figure.status()));
    }

    private static boolean isNear(String value, String printed) {
        BigDecimal own = new BigDecimal(value);
        BigDecimal old = new BigDecimal(printed);
        return own.compareTo(old.multiply(MOST_TIMES)) <= 0
                && own.multiply(MOST_TIMES).compareTo(old) >= 0;
    }

    /** The tables themselves know best what contradicts them. */
    private static boolean canBeLoaded(List<CatalogueOverride> overrides) {
        try {
            TradeTables.load(overrides);
            return true;
        } catch (IllegalStateException | IllegalArgumentException | ArithmeticException e) {
            return false;
        }
    }

    static ArrayNode write(List<CatalogueOverride> overrides) {
        return JsonParts.array(
                overrides,
                override ->
                        JsonParts.object()
                                .put("table", override.table())
                                .put("row", override.row())
                                .put("column", override.column())
                                .put("value", override.value())
                                .put("note", override.note()));
    }
}
