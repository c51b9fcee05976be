package org.loomwright.core.bundle;

import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.routing.Routes;

import java.util.HashSet;
import java.util.Set;

/**
 * How much packing an analysis of a loom takes at the most, before any of it is done.
 *
 * <p>Measured times grow about as n times the square root of n with the number of wires n in a bundle (9 ms for 30, 44 ms for 120,
 * 1,160 ms for 1,000 on one core), so that is the unit: a bundle of 30 is 164 units, about 0.05 ms each. Every different bundle
 * counts once.
 *
 * @param units the sum over the different bundles
 */
public record PackingWork(long units) {

    /** About two minutes on one core; a vehicle's loom takes a few thousand units. */
    public static final PackingWork MOST = new PackingWork(2_500_000);

    /**
     * @param loom a proven loom
     * @param effort how hard to look for the tightest arrangements
     * @return what packing all its bundles takes
     */
    public static PackingWork of(Loom loom, Effort effort) {
        Set<WireCounts> different =
                new HashSet<>(SegmentCounts.of(loom, new Routes(loom)).values());
        double units =
                different.stream()
                        .mapToInt(WireCounts::total)
                        .mapToDouble(wires -> wires * Math.sqrt(wires))
                        .sum();
        return new PackingWork(Math.round(units * times(effort)));
    }

    private static int times(Effort effort) {
        return switch (effort) {
            case NORMAL -> 1;
            case THOROUGH -> 10;
            case EXHAUSTIVE -> 100;
        };
    }

    /** @return whether it is more than an analysis may take */
    public boolean isTooMuch() {
        return units > MOST.units;
    }
}
