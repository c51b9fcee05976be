package org.loomwright.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The tables that hold figures of the trade, and which of their columns those are. A workshop may set its own figure in the place of
 * one that is not published. Words, codes, conventions and states to look at are no figures.
 */
enum FigureTable {
    CONDUCTOR_SIZES(
            List.of("designation"),
            figure("outsideDiameterMm", "diameterStatus", "diameterSource"),
            figure("ratingA", "ratingStatus", "ratingSource")),
    CONDUCTOR_RESISTANCES(List.of("designation"), figure("resistanceMilliohmPerM")),
    CONDUCTOR_METALS(
            List.of("metal"),
            figure("resistivityMilliohmMm2PerM", "resistivityStatus", "resistivitySource"),
            figure("coefficientPerK", "coefficientStatus", "coefficientSource")),
    COVERINGS(List.of("code"), figure("wallMm")),
    TERMINALS(
            List.of("code"),
            figure("stripMm"),
            figure("allowanceMm"),
            figure("renewalMm"),
            figure("leastMm2"),
            figure("mostMm2"),
            figure("currentA")),
    FUSES(List.of("style", "markedA"), figure("continuousA"), figure("blowA")),
    BUNDLE_FACTORS(List.of("fromLoadedWires"), figure("factor")),
    DROP_LIMITS(
            List.of("circuitKind"),
            figure("limitPercent", "limitStatus", "limitSource"),
            figure("aimPercent", "aimStatus", "aimSource")),
    CURRENT_RULES(List.of("rule"), figure("value")),
    ELECTRICAL_SETTINGS(List.of("name"), figure("value")),
    RELAYS(
            List.of("code"),
            figure("coilLeastA", "coilStatus", "coilSource"),
            figure("coilMostA", "coilStatus", "coilSource"),
            figure("pullIn"),
            figure("contactA")),
    TYPICAL_LOADS(List.of("circuit", "part"), figure("low"), figure("high"));

    /** A column with a figure, and the columns that say where it comes from. */
    record Figure(String column, String status, String source) {}

    private final List<String> key;
    private final List<Figure> figures;

    FigureTable(List<String> key, Figure... figures) {
        this.key = key;
        this.figures = List.of(figures);
    }

    private static Figure figure(String column) {
        return figure(column, "status", "source");
    }

    private static Figure figure(String column, String status, String source) {
        return new Figure(column, status, source);
    }

    static Optional<FigureTable> find(String name) {
        return Stream.of(values()).filter(table -> table.table().equals(name)).findFirst();
    }

    /** @return names of all tables with figures, for a person */
    static String names() {
        return Arrays.stream(values()).map(FigureTable::table).collect(Collectors.joining(", "));
    }

    /** @return its name, for example {@code conductor-sizes} */
    String table() {
        return JsonThing.kebab(this);
    }

    List<Figure> figures() {
        return figures;
    }

    Optional<Figure> findFigure(String column) {
        return figures.stream().filter(figure -> figure.column().equals(column)).findFirst();
    }

    /** @return what a row is called: the cells of its key with spaces between them */
    String nameOf(Map<String, String> row) {
        return key.stream()
                .map(column -> row.getOrDefault(column, ""))
                .collect(Collectors.joining(" "))
                .strip();
    }
}
