package org.loomwright.core.colour.code;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.electrical.tracing.Supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The colour code of BS AU 7 as far as it was read or is remembered. Immutable and thread-safe.
 *
 * <p>The scheme dates from about 1936 (published, without a finer date); older vehicles may follow any other.
 */
public final class ColourCode {

    /** From about this year on the scheme was in use. */
    public static final int SCHEME_SINCE = 1936;

    private final Map<WireColour, List<ColourFunction>> functions = new LinkedHashMap<>();
    private final List<SupplyColour> supplies;
    private final List<LookAlike> lookAlikes;
    private final Map<String, Set<String>> alike = new HashMap<>();

    /**
     * @param catalogue basic colours and services that the rows refer to
     * @param functions what colours are there for
     * @param supplies what colours are fed from
     * @param lookAlikes colours that are taken for one another
     * @throws IllegalArgumentException if a row refers to a colour or service that there is not, stands twice, or a body has no supply
     */
    public ColourCode(
            Catalogue catalogue,
            List<ColourFunction> functions,
            List<SupplyColour> supplies,
            List<LookAlike> lookAlikes) {
        this.supplies = List.copyOf(supplies);
        this.lookAlikes = List.copyOf(lookAlikes);
        for (LookAlike row : lookAlikes) {
            alike.computeIfAbsent(row.a(), letters -> new HashSet<>()).add(row.b());
            alike.computeIfAbsent(row.b(), letters -> new HashSet<>()).add(row.a());
        }
        supplies.forEach(row -> checkColour(row.colour(), catalogue));
        functions.forEach(row -> add(row, catalogue));
        checkLookAlikes(catalogue);
        if (supplies.stream().noneMatch(SupplyColour::isEarth)) {
            throw new IllegalArgumentException("no colour goes to earth");
        }
    }

    private void add(ColourFunction row, Catalogue catalogue) {
        checkColour(row.colour(), catalogue);
        for (String service : row.services()) {
            if (catalogue.findService(service).isEmpty()) {
                throw new IllegalArgumentException(
                        "%s serves %s, but there is no such service"
                                .formatted(row.colour(), service));
            }
        }
        if (suppliesOf(row.colour()).isEmpty()) {
            throw new IllegalArgumentException(
                    "nothing says what %s is fed from".formatted(row.colour().body()));
        }
        List<ColourFunction> uses =
                functions.computeIfAbsent(row.colour(), colour -> new ArrayList<>());
        if (uses.stream().anyMatch(use -> use.function().equals(row.function()))) {
            throw new IllegalArgumentException(
                    "%s is there twice for: %s".formatted(row.colour(), row.function()));
        }
        uses.add(row);
    }

    private static void checkColour(WireColour colour, Catalogue catalogue) {
        if (!catalogue.hasColour(colour)) {
            throw new IllegalArgumentException("the catalogue has no colour " + colour);
        }
    }

    private void checkLookAlikes(Catalogue catalogue) {
        Set<Object> seen = new HashSet<>();
        for (LookAlike row : lookAlikes) {
            checkColour(new WireColour(row.a(), row.b()), catalogue);
            if (!seen.add(List.of(Set.of(row.a(), row.b()), row.when()))) {
                throw new IllegalArgumentException(
                        "%s and %s look alike %s twice"
                                .formatted(row.a(), row.b(), row.when().words()));
            }
        }
    }

    /** @return every use of every colour, in the order of the table */
    public List<ColourFunction> functions() {
        return functions.values().stream().flatMap(List::stream).toList();
    }

    /** @return every row that says what a colour is fed from, in the order of the table */
    public List<SupplyColour> supplies() {
        return supplies;
    }

    /** @return every pair of colours that look alike, in the order of the table */
    public List<LookAlike> lookAlikes() {
        return lookAlikes;
    }

    /** @return the uses of that colour; none if the list does not have it */
    public List<ColourFunction> functionsOf(WireColour colour) {
        return List.copyOf(functions.getOrDefault(colour, List.of()));
    }

    /** @return the rows that say what that colour is fed from: those of the whole colour first, then those of its body */
    public List<SupplyColour> suppliesOf(WireColour colour) {
        WireColour body = new WireColour(colour.body(), null);
        List<SupplyColour> rows = new ArrayList<>(rowsOf(colour));
        if (!body.equals(colour)) {
            rows.addAll(rowsOf(body));
        }
        return List.copyOf(rows);
    }

    private List<SupplyColour> rowsOf(WireColour colour) {
        return supplies.stream().filter(row -> row.colour().equals(colour)).toList();
    }

    /**
     * @param supply a supply
     * @param year of the vehicle
     * @return the body colour of that supply in that year, published rows first
     */
    public Optional<SupplyColour> findBody(Supply supply, int year) {
        return supplies.stream()
                .filter(row -> row.supply() == supply && row.colour().tracer() == null)
                .filter(row -> row.since() <= year)
                .min(Comparator.comparing(row -> !row.isPublished()));
    }

    /** @return whether a vehicle of that year may have the colour: one of its rows is old enough */
    public boolean isUsedIn(WireColour colour, int year) {
        return suppliesOf(colour).stream().anyMatch(row -> row.since() <= year);
    }

    /** @return the row of the colour that goes to earth */
    public SupplyColour earth() {
        return supplies.stream().filter(SupplyColour::isEarth).findFirst().orElseThrow();
    }

    /** @return whether the body of the colour is the one that goes to earth */
    public boolean hasEarthBody(WireColour colour) {
        return earth().colour().body().equals(colour.body());
    }

    /** @return whether these two basic colours are ever taken for one another */
    public boolean areAlike(String one, String other) {
        return alike.getOrDefault(one, Set.of()).contains(other);
    }

    /** @return when these two basic colours are taken for one another */
    public List<LookAlike> between(String one, String other) {
        return lookAlikes.stream().filter(row -> row.isOf(one, other)).toList();
    }

    /**
     * @param one a basic colour
     * @param other another
     * @return how far apart they are drawn, 0 for the same to 441 (black and white): own measure, the straight distance of their swatches
     */
    public static int distance(BaseColour one, BaseColour other) {
        int sum = 0;
        for (int at = 1; at < 7; at += 2) {
            int apart =
                    Integer.parseInt(one.swatch(), at, at + 2, 16)
                            - Integer.parseInt(other.swatch(), at, at + 2, 16);
            sum += apart * apart;
        }
        return (int) Math.sqrt(sum);
    }
}
