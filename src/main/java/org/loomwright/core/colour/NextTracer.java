package org.loomwright.core.colour;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourProposal.Choice;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourFunction;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The tracers that would do for a body where no function of the list fits: not used at either end, rather without another function in the
 * list, hard to take for a neighbour also when faded or dirty, and far from the neighbours' tracers. Own rule.
 */
final class NextTracer {

    private static final Provenance RULE =
            new Provenance(Status.MEMORY, "own rule for a free tracer");

    private static final Comparator<Free> BEST_FIRST =
            Comparator.comparingInt(Free::otherUses)
                    .thenComparingInt(Free::confusable)
                    .thenComparing(Comparator.comparingInt(Free::leastDistance).reversed());

    private final ColourCode code;
    private final Catalogue catalogue;
    private final Set<WireColour> neighbours;

    /** A colour that is free, with what speaks against it, the weightiest first, and for it. */
    private record Free(WireColour colour, int otherUses, int confusable, int leastDistance) {}

    NextTracer(ColourCode code, Catalogue catalogue, Set<WireColour> neighbours) {
        this.code = code;
        this.catalogue = catalogue;
        this.neighbours = new TreeSet<>(neighbours);
    }

    /** Every free tracer on that body, the best first. */
    List<Choice> on(String body) {
        return catalogue.colours().stream()
                .filter(tracer -> !tracer.letters().equals(body))
                .map(tracer -> new WireColour(body, tracer.letters()))
                .filter(colour -> !neighbours.contains(colour))
                .map(this::judged)
                .sorted(BEST_FIRST)
                .map(free -> new Choice(free.colour(), reason(free.colour()), RULE))
                .toList();
    }

    private Free judged(WireColour colour) {
        return new Free(colour, otherUses(colour), confusable(colour), leastDistance(colour));
    }

    /** 0 where the list has no use for the colour, 1 where one is remembered, 2 where one is published. */
    private int otherUses(WireColour colour) {
        return code.functionsOf(colour).stream()
                .mapToInt(use -> use.isPublished() ? 2 : 1)
                .max()
                .orElse(0);
    }

    private int confusable(WireColour colour) {
        return (int) neighbours.stream().filter(other -> isLike(colour, other)).count();
    }

    private boolean isLike(WireColour one, WireColour other) {
        return isLike(one.body(), other.body()) && isLike(tracerOrBody(one), tracerOrBody(other));
    }

    /** A tracer that cannot be seen leaves the body. */
    private static String tracerOrBody(WireColour colour) {
        String tracer = colour.tracer();
        return tracer == null ? colour.body() : tracer;
    }

    private boolean isLike(String one, String other) {
        return one.equals(other) || code.areAlike(one, other);
    }

    private int leastDistance(WireColour colour) {
        return neighbours.stream()
                .filter(other -> other.body().equals(colour.body()))
                .mapToInt(other -> distance(tracerOrBody(colour), tracerOrBody(other)))
                .min()
                .orElseGet(() -> distance(tracerOrBody(colour), colour.body()));
    }

    private int distance(String one, String other) {
        BaseColour a = catalogue.findColour(one).orElseThrow();
        BaseColour b = catalogue.findColour(other).orElseThrow();
        return ColourCode.distance(a, b);
    }

    private String reason(WireColour colour) {
        String like =
                neighbours.stream()
                        .filter(other -> isLike(colour, other))
                        .map(WireColour::letters)
                        .collect(Collectors.joining(", "));
        String apart =
                like.isEmpty()
                        ? "nothing beside it can be taken for it, also when faded"
                        : "may be taken for " + like + " when faded or dirty";
        return "%s is free at both ends; %s; %s".formatted(colour, use(colour), apart);
    }

    private String use(WireColour colour) {
        List<ColourFunction> uses = code.functionsOf(colour);
        return uses.isEmpty()
                ? "the list has no use for it"
                : "elsewhere it is there for: " + uses.getFirst().function();
    }
}
