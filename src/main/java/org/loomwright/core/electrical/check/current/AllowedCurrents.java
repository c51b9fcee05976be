package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What each wire of one loom may carry in a scenario: its rating, less for the wires that warm it and for a warm place.
 *
 * <p>Source: the steps are those of {@link org.loomwright.core.electrical.Derating}. The bundle factor is that of the fullest segment on
 * the wire's route, where only wires count that carry at least the rules' share of their own rating at the same time. Routes are walked
 * once. Cost of a scenario: the sum of the lengths of the routes in segments. Immutable and thread-safe.
 */
final class AllowedCurrents {

    private final ElectricalTables tables;
    private final CurrentRules rules;
    private final List<Wire> wires;
    private final Map<String, Integer> indexes = new HashMap<>();
    private final int[][] segmentsOf;
    private final List<ConductorSize> sizes = new ArrayList<>();
    private final int segments;

    AllowedCurrents(Loom loom, Catalogue catalogue, ElectricalTables tables, CurrentRules rules) {
        this.tables = tables;
        this.rules = rules;
        this.wires = List.copyOf(loom.wires().values());
        this.segments = loom.segments().size();
        this.segmentsOf = new int[wires.size()][];
        Map<String, Integer> segmentIndexes = new HashMap<>();
        loom.segments().keySet().forEach(id -> segmentIndexes.put(id, segmentIndexes.size()));
        Routes routes = new Routes(loom);
        for (Wire wire : wires) {
            int index = indexes.size();
            indexes.put(wire.id(), index);
            sizes.add(catalogue.getSize(wire.size()));
            segmentsOf[index] =
                    routes.of(wire).stream()
                            .map(Segment::id)
                            .mapToInt(segmentIndexes::get)
                            .toArray();
        }
    }

    InScenario in(Readings readings) {
        long[] currents = new long[wires.size()];
        for (WireReading reading : readings.wires()) {
            Integer index = indexes.get(reading.wire());
            if (index != null) {
                currents[index] = Math.abs(reading.current().milliamperes());
            }
        }
        Temperature ambient = readings.scenario().ambient();
        return new InScenario(
                readings.scenario().name(),
                tables,
                rules,
                this,
                currents,
                loaded(currents),
                ambient);
    }

    /** For each wire the number of loaded wires in the fullest segment of its route, itself among them whether loaded or not. */
    private int[] loaded(long[] currents) {
        int[] inSegment = new int[segments];
        boolean[] isLoaded = new boolean[currents.length];
        double share = rules.loadedFrom().value().toDouble();
        for (int i = 0; i < currents.length; i++) {
            isLoaded[i] = currents[i] > 0 && currents[i] >= share * size(i).rating().milliamperes();
            if (isLoaded[i]) {
                for (int segment : segmentsOf[i]) {
                    inSegment[segment]++;
                }
            }
        }
        int[] counts = new int[currents.length];
        for (int i = 0; i < counts.length; i++) {
            int fullest = isLoaded[i] ? 1 : 0;
            for (int segment : segmentsOf[i]) {
                fullest = Math.max(fullest, inSegment[segment]);
            }
            counts[i] = Math.max(1, isLoaded[i] ? fullest : fullest + 1);
        }
        return counts;
    }

    List<Wire> wires() {
        return wires;
    }

    Wire wire(int index) {
        return wires.get(index);
    }

    ConductorSize size(int index) {
        return sizes.get(index);
    }

    /** The wire's number, or -1 where this loom has no such wire. */
    int find(String wire) {
        return indexes.getOrDefault(wire, -1);
    }
}
