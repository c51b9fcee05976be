package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the trade's tables say about current: resistance of every conductor size, the metal, fuses, bundling. Immutable and
 * thread-safe. Making one checks the tables against each other.
 */
public final class ElectricalTables {

    /**
     * A row of the resistance table must lie between these multiples of resistivity over area. Strand and lay add 5 to 9 %,
     * and "nominal" areas of metric cable are up to 8 % too large; anything beyond is a misprint. Own choice.
     */
    private static final double LEAST_OF_IDEAL = 0.95;

    private static final double MOST_OF_IDEAL = 1.20;

    private final Map<String, ConductorResistance> resistances = new LinkedHashMap<>();
    private final ConductorMetal metal;
    private final List<FuseRating> fuses;
    private final List<BundleFactor> bundleFactors;

    /**
     * @param catalogue the conductor sizes that the resistances belong to
     * @param resistances one row for each of its sizes, none for others
     * @param metal what all of them are made of
     * @param fuses fuses that can be had
     * @param bundleFactors from one wire on, falling
     * @throws IllegalArgumentException if a row is missing, stands twice or contradicts another table
     */
    public ElectricalTables(
            Catalogue catalogue,
            List<ConductorResistance> resistances,
            ConductorMetal metal,
            List<FuseRating> fuses,
            List<BundleFactor> bundleFactors) {
        this.metal = metal;
        resistances.forEach(row -> addResistance(catalogue, row));
        for (ConductorSize size : catalogue.sizes()) {
            if (!this.resistances.containsKey(size.designation())) {
                throw new IllegalArgumentException(
                        "conductor size " + size.designation() + " has no resistance");
            }
        }
        checkFalling(bundleFactors);
        this.bundleFactors = List.copyOf(bundleFactors);
        this.fuses =
                fuses.stream()
                        .sorted(
                                Comparator.comparing(FuseRating::style)
                                        .thenComparing(FuseRating::continuous))
                        .toList();
    }

    private void addResistance(Catalogue catalogue, ConductorResistance row) {
        ConductorSize size =
                catalogue
                        .findSize(row.designation())
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "there is a resistance for %s, but no such size"
                                                        .formatted(row.designation())));
        double ideal =
                metal.resistivity().toDoubleMilliohmsPerMetre()
                        / size.metal().toDoubleSquareMillimetres();
        double multiple = row.at20().toDoubleMilliohmsPerMetre() / ideal;
        if (multiple < LEAST_OF_IDEAL || multiple > MOST_OF_IDEAL) {
            throw new IllegalArgumentException(
                    "%s cannot be the resistance of %s, whose metal measures %s"
                            .formatted(row.at20(), row.designation(), size.metal()));
        }
        if (resistances.put(row.designation(), row) != null) {
            throw new IllegalArgumentException(
                    "there are two resistances for " + row.designation());
        }
    }

    private static void checkFalling(List<BundleFactor> factors) {
        if (factors.isEmpty()
                || factors.getFirst().fromLoadedWires() != 1
                || !factors.getFirst().factor().equals(Ratio.ONE)) {
            throw new IllegalArgumentException("bundle factors begin with 1 for 1 wire");
        }
        for (int i = 1; i < factors.size(); i++) {
            BundleFactor before = factors.get(i - 1);
            BundleFactor after = factors.get(i);
            if (after.fromLoadedWires() <= before.fromLoadedWires()
                    || after.factor().compareTo(before.factor()) >= 0) {
                throw new IllegalArgumentException(
                        "bundle factors fall with the number of wires, but %d wires have %s"
                                .formatted(after.fromLoadedWires(), after.factor()));
            }
        }
    }

    /**
     * @param designation a size that is known to exist, because the loom was checked
     * @return its resistance
     * @throws IllegalArgumentException if there is no such size
     */
    public ConductorResistance getResistance(String designation) {
        ConductorResistance row = resistances.get(designation);
        if (row == null) {
            throw new IllegalArgumentException("there is no resistance for " + designation);
        }
        return row;
    }

    /** @return every resistance, in the order of the table */
    public List<ConductorResistance> resistances() {
        return List.copyOf(resistances.values());
    }

    /** @return the resistance at 20 °C of a metre of the metal with a cross-section of 1 mm² */
    public LinearResistance resistivity() {
        return metal.resistivity();
    }

    /** @return what conductors are made of */
    public ConductorMetal metal() {
        return metal;
    }

    /** @return every fuse, by style and continuous current */
    public List<FuseRating> fuses() {
        return fuses;
    }

    /**
     * @param style build and marking
     * @param marked the figure on the fuse
     * @return the fuse, if the table has it
     */
    public Optional<FuseRating> findFuse(FuseRating.FuseStyle style, Current marked) {
        return fuses.stream()
                .filter(fuse -> fuse.style() == style && fuse.marked().equals(marked))
                .findFirst();
    }

    /** @return what is left of a rating in a bundle, from one wire on */
    public List<BundleFactor> bundleFactors() {
        return bundleFactors;
    }

    /**
     * @param loadedWires how many wires of a bundle carry current at the same time, at least 1
     * @return what is left of their rating, with its source
     * @throws IllegalArgumentException if there is no wire
     */
    public BundleFactor bundleFactorFor(int loadedWires) {
        return bundleFactors.stream()
                .filter(row -> row.fromLoadedWires() <= loadedWires)
                .reduce((earlier, later) -> later)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "a bundle has at least 1 loaded wire, was " + loadedWires));
    }
}
