package org.loomwright.core.routing;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.TerminalType;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;

import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Cut lengths of the wires of one loom.
 *
 * <p>Cut length = round up to the step of: (segments on the route + both tails) x (1 + take-up) + termination allowance at each
 * end + reserve. With a computed take-up the helix counts on the covered run only and each bend adds angle x D / 2, the longest
 * way an outer wire of a bundle of diameter D can take (own derivation: in a flat bend the outer wire runs on a radius larger by
 * D / 2). Exact but for the take-up, which is rounded up to the micrometre. Cost: O(log n) a wire, however many segments
 * it runs through.
 */
public final class CutLengths {

    private final Loom loom;
    private final Routes routes;
    private final Catalogue catalogue;
    private final Allowances allowances;
    private final BendExtra bends;

    /**
     * @param loom a proven loom
     * @param routes its routes
     * @param catalogue the tables that it refers to
     * @param allowances what to add
     * @param tightDiameters diameter of the bare bundle by segment, needed where a computed take-up meets a bend
     */
    public CutLengths(
            Loom loom,
            Routes routes,
            Catalogue catalogue,
            Allowances allowances,
            Map<String, Length> tightDiameters) {
        this.loom = loom;
        this.routes = routes;
        this.catalogue = catalogue;
        this.allowances = allowances;
        this.bends = new BendExtra(loom, routes, tightDiameters);
    }

    /** @return the cut length of every wire, in the order of their ids */
    public List<CutLength> all() {
        return loom.wires().values().stream().map(this::of).toList();
    }

    /**
     * @param wire a wire of the loom
     * @return its cut length
     */
    public CutLength of(Wire wire) {
        TerminalType terminalA = catalogue.getTerminal(wire.a().terminal());
        TerminalType terminalB = catalogue.getTerminal(wire.b().terminal());
        Length alongLoom = routes.lengthOf(wire);
        Length tailA = loom.getPoint(wire.a()).tail();
        Length tailB = loom.getPoint(wire.b()).tail();
        CutLength unrounded =
                new CutLength(
                        wire.id(),
                        alongLoom,
                        tailA,
                        tailB,
                        takeUp(wire, alongLoom, tailA.plus(tailB)),
                        terminalA.allowance(),
                        terminalB.allowance(),
                        terminalA
                                .renewal()
                                .plus(terminalB.renewal())
                                .times(allowances.reTerminations()),
                        Length.ZERO);
        Length sum = unrounded.beforeRounding();
        return withRounding(unrounded, sum.ceilingTo(allowances.step()).minus(sum));
    }

    private Length takeUp(Wire wire, Length alongLoom, Length tails) {
        return switch (allowances.takeUp()) {
            case TakeUp.Given given ->
                    alongLoom.plus(tails).times(given.ratio(), RoundingMode.CEILING);
            case TakeUp.FromLay lay ->
                    alongLoom.times(lay.helix(), RoundingMode.CEILING).plus(bends.of(wire));
        };
    }

    private static CutLength withRounding(CutLength cut, Length rounding) {
        return new CutLength(
                cut.wire(),
                cut.alongLoom(),
                cut.tailA(),
                cut.tailB(),
                cut.takeUp(),
                cut.terminationA(),
                cut.terminationB(),
                cut.reserve(),
                rounding);
    }

    /** What bends add, summed from the datum once so that a wire's share is a difference. */
    private static final class BendExtra {

        private final Loom loom;
        private final Routes routes;
        private final Map<String, Length> fromDatum;

        BendExtra(Loom loom, Routes routes, Map<String, Length> tightDiameters) {
            this.loom = loom;
            this.routes = routes;
            this.fromDatum = new HashMap<>(Map.of(loom.datum(), Length.ZERO));
            for (Segment segment : loom.walk()) {
                Length before = fromDatum.getOrDefault(segment.from(), Length.ZERO);
                fromDatum.put(segment.to(), before.plus(extra(segment, tightDiameters)));
            }
        }

        private static Length extra(Segment segment, Map<String, Length> tightDiameters) {
            if (segment.bendDegrees() == 0) {
                return Length.ZERO;
            }
            Length diameter = tightDiameters.getOrDefault(segment.id(), Length.ZERO);
            double extraMm =
                    Math.toRadians(segment.bendDegrees()) * diameter.toDoubleMillimetres() / 2;
            return Length.roundedFromMillimetres(extraMm, RoundingMode.CEILING);
        }

        Length of(Wire wire) {
            String a = loom.getPoint(wire.a()).node();
            String b = loom.getPoint(wire.b()).node();
            Length shared = at(routes.turningPoint(a, b));
            return at(a).plus(at(b)).minus(shared).minus(shared);
        }

        private Length at(String node) {
            return fromDatum.getOrDefault(node, Length.ZERO);
        }
    }
}
