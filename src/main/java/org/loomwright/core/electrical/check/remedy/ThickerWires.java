package org.loomwright.core.electrical.check.remedy;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.ReplaceWire;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.electrical.check.remedy.Proposal.Kind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.Routes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Thicker wires in the place of thin ones, of the same make of cable where that has the size. Immutable and thread-safe. */
public final class ThickerWires {

    /** Own choice: from 14 to 44 strands; what is thicker still is another kind of cable with other terminals. */
    private static final double MOST_TIMES = 3.2;

    private final Loom loom;
    private final Catalogue catalogue;
    private final Routes routes;

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     */
    public ThickerWires(Loom loom, Catalogue catalogue) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.routes = new Routes(loom);
    }

    /**
     * @param size of a wire
     * @return sizes with more metal, up to 3.2 times as much, and no lower rating: those of the same make first, thin before thick
     */
    public List<ConductorSize> above(String size) {
        ConductorSize now = catalogue.getSize(size);
        return catalogue.sizes().stream()
                .filter(other -> other.metal().compareTo(now.metal()) > 0)
                .filter(
                        other ->
                                other.metal().toDoubleSquareMillimetres()
                                        <= MOST_TIMES * now.metal().toDoubleSquareMillimetres())
                .filter(other -> other.rating().compareTo(now.rating()) >= 0)
                .sorted(
                        Comparator.comparing(
                                        (ConductorSize other) ->
                                                !make(other.designation()).equals(make(size)))
                                .thenComparing(ConductorSize::metal)
                                .thenComparing(ConductorSize::designation))
                .toList();
    }

    /** What the designations of one make of cable have in common: {@code /0.30} of {@code 14/0.30}. */
    private static String make(String designation) {
        int begin = 0;
        while (begin < designation.length() && isPartOfNumber(designation.charAt(begin))) {
            begin++;
        }
        return designation.substring(begin);
    }

    private static boolean isPartOfNumber(char character) {
        return character >= '0' && character <= '9' || character == '.';
    }

    /**
     * @param enough wires that may become thicker, each with the sizes that should do
     * @return for each wire the two thinnest sizes that should do, the cheapest first: length times added area
     */
    public List<Proposal> of(Map<String, Predicate<ConductorSize>> enough) {
        return enough.entrySet().stream()
                .flatMap(entry -> of(loom.getWire(entry.getKey()), entry.getValue()))
                .sorted(Proposal.CHEAPEST_FIRST)
                .toList();
    }

    private Stream<Proposal> of(Wire wire, Predicate<ConductorSize> enough) {
        return above(wire.size()).stream().filter(enough).limit(2).map(size -> of(wire, size));
    }

    private Proposal of(Wire wire, ConductorSize size) {
        Length length = length(wire);
        double added =
                size.metal().toDoubleSquareMillimetres()
                        - catalogue.getSize(wire.size()).metal().toDoubleSquareMillimetres();
        BigDecimal metres =
                length.toMillimetres().movePointLeft(3).setScale(2, RoundingMode.HALF_UP);
        return new Proposal(
                Kind.THICKER_WIRE,
                "Take %s instead of %s for wire %s (%s m)."
                        .formatted(
                                size.designation(), wire.size(), wire.id(), metres.toPlainString()),
                List.of(replace(wire, size)),
                Math.round(length.toDoubleMillimetres() * added));
    }

    private Length length(Wire wire) {
        return routes.lengthOf(wire)
                .plus(loom.getPoint(wire.a()).tail())
                .plus(loom.getPoint(wire.b()).tail());
    }

    private static Amendment replace(Wire wire, ConductorSize size) {
        return new ReplaceWire(
                "thicker-" + wire.id(),
                "Carries more than it should as " + wire.size() + ".",
                wire.id(),
                wire.colour(),
                size.designation());
    }
}
