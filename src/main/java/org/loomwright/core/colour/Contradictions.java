package org.loomwright.core.colour;

import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourFunction;
import org.loomwright.core.colour.code.Leg;
import org.loomwright.core.colour.code.SupplyColour;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.loom.Wire;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether what tracing says about a wire speaks against its colour. A wire that tracing cannot place is not judged. */
final class Contradictions {

    private final TracedLoom traced;
    private final ColourCode code;
    private final Feeds feeds;

    Contradictions(TracedLoom traced, ColourCode code) {
        this.traced = traced;
        this.code = code;
        this.feeds = new Feeds(traced, code);
    }

    /** Whether something published speaks against the colour; what is only remembered takes no wire its code. */
    boolean isRejected(Wire wire) {
        boolean isPublished =
                code.suppliesOf(wire.colour()).stream().anyMatch(SupplyColour::isPublished);
        return isByFeed(wire) ? isPublished : findRightFunction(wire).isPresent();
    }

    /** Whether the body belongs to another supply, or an earth is not black. */
    boolean isByFeed(Wire wire) {
        WireTrace trace = traced.trace(wire);
        boolean isKnown = trace.role() == Role.RETURN || trace.supply() != Supply.NONE;
        return isKnown
                && trace.role() != Role.LOOSE
                && !isOwn(wire.colour().body())
                && !feeds.agrees(wire.colour(), trace)
                && code.functionsOf(wire.colour()).stream()
                        .noneMatch(use -> excuses(use, trace, legs(wire)));
    }

    /** Nothing says what a body that only this loom has is fed from. */
    private boolean isOwn(String body) {
        return traced.catalogue().findOwnColour(body).isPresent();
    }

    private Set<Leg> legs(Wire wire) {
        return Legs.of(traced, traced.trace(wire), wire.a(), wire.b());
    }

    /** A use that fits this circuit, or one that nobody can tell from a tracing, goes before the rule for bodies. */
    private static boolean excuses(ColourFunction use, WireTrace trace, Set<Leg> legs) {
        boolean saysMore = !use.isGeneral() || use.leg() == Leg.OTHER;
        return saysMore && use.mayBe(trace.serves(), legs);
    }

    /** What is published for such a wire, if every published use of its colour is another one. */
    Optional<ColourFunction> findRightFunction(Wire wire) {
        WireTrace trace = traced.trace(wire);
        Set<Leg> legs = legs(wire);
        List<ColourFunction> uses = code.functionsOf(wire.colour());
        boolean isOther =
                !uses.isEmpty() && uses.stream().allMatch(use -> isOther(use, trace, legs));
        if (!isOther || legs.isEmpty()) {
            return Optional.empty();
        }
        return code.functions().stream()
                .filter(use -> !use.colour().equals(wire.colour()))
                .filter(use -> isPublishedFor(use, trace, legs))
                .findFirst();
    }

    private static boolean isOther(ColourFunction use, WireTrace trace, Set<Leg> legs) {
        return use.isPublished() && !use.isGeneral() && !use.mayBe(trace.serves(), legs);
    }

    private boolean isPublishedFor(ColourFunction use, WireTrace trace, Set<Leg> legs) {
        boolean isCloseEnough = !use.isGeneral() || use.leg() == Leg.EARTH;
        return use.isPublished()
                && isCloseEnough
                && legs.contains(use.leg())
                && use.covers(trace.serves())
                && feeds.agrees(use, trace);
    }
}
