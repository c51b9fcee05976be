package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The limits of the checks of currents, with their sources.
 *
 * @param drops one for each kind of circuit
 * @param insulation what it stands
 * @param loadedFrom from which share of its rating on a wire counts as one that warms its bundle
 * @param fuseLoad most share of its continuous current that a fuse should carry
 * @param fuseWithinBare how far along a bare wire its fuse may be from the source
 * @param fuseWithinCovered the same where the wire runs in a covering
 * @param fuseWithinBattery the same where it starts at the battery itself
 * @param contactGrowth how many times as much as before may flow through a contact whose rating nobody knows
 */
public record CurrentRules(
        Map<CircuitKind, DropLimit> drops,
        Sourced<Temperature> insulation,
        Sourced<Ratio> loadedFrom,
        Sourced<Ratio> fuseLoad,
        Sourced<Length> fuseWithinBare,
        Sourced<Length> fuseWithinCovered,
        Sourced<Length> fuseWithinBattery,
        Sourced<Ratio> contactGrowth) {

    public CurrentRules {
        drops = Map.copyOf(drops);
        for (CircuitKind kind : CircuitKind.values()) {
            if (!drops.containsKey(kind)) {
                throw new IllegalArgumentException(kind + " circuits have no limit of drop");
            }
        }
    }

    /**
     * @param limits in any order
     * @return the limits by kind
     * @throws IllegalArgumentException if a kind stands twice
     */
    public static Map<CircuitKind, DropLimit> byKind(List<DropLimit> limits) {
        Map<CircuitKind, DropLimit> drops = new EnumMap<>(CircuitKind.class);
        for (DropLimit limit : limits) {
            if (drops.put(limit.kind(), limit) != null) {
                throw new IllegalArgumentException(
                        "there are two limits for " + limit.kind() + " circuits");
            }
        }
        return drops;
    }

    DropLimit drop(CircuitKind kind) {
        DropLimit limit = drops.get(kind);
        if (limit == null) {
            throw new IllegalStateException(kind + " circuits have no limit of drop");
        }
        return limit;
    }
}
