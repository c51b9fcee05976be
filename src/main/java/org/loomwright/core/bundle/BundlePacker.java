package org.loomwright.core.bundle;

import org.loomwright.core.geometry.Circle;
import org.loomwright.core.geometry.packing.Certainty;
import org.loomwright.core.geometry.packing.CirclePacker;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.geometry.packing.PackedCircles;
import org.loomwright.core.quantity.Length;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Packs bundles and remembers what it has packed: the same multiset of diameters is packed once, whichever segment or analysis it
 * turns up in, until {@code remembered} others have been used more recently. The answer does not depend on what is remembered.
 * Thread-safe; two threads that meet the same new bundle at once may both pack it.
 */
public final class BundlePacker {

    private final Map<Task, PackedBundle> memory;

    private record Task(Effort effort, List<Length> diameters) {}

    /**
     * @param remembered how many bundles to keep
     */
    public BundlePacker(int remembered) {
        this.memory =
                Collections.synchronizedMap(
                        new LinkedHashMap<>(16, 0.75f, true) {
                            @Override
                            protected boolean removeEldestEntry(
                                    Map.Entry<Task, PackedBundle> eldest) {
                                return size() > remembered;
                            }
                        });
    }

    /**
     * @param diameters outside diameters, each positive, in any order
     * @param effort how hard to look for a tighter arrangement
     * @return the packed bundle; of zero diameter for no wires
     */
    public PackedBundle pack(Collection<Length> diameters, Effort effort) {
        Task task = new Task(effort, diameters.stream().sorted().toList());
        PackedBundle known = memory.get(task);
        if (known != null) {
            return known;
        }
        PackedBundle packed = packAnew(task.diameters(), effort);
        memory.put(task, packed);
        return packed;
    }

    private static PackedBundle packAnew(List<Length> diameters, Effort effort) {
        double[] radiiMm =
                diameters.stream().mapToDouble(d -> d.toDoubleMillimetres() / 2).toArray();
        PackedCircles packed = CirclePacker.pack(radiiMm, effort);
        List<Circle> circles = new ArrayList<>();
        for (int i = 0; i < radiiMm.length; i++) {
            circles.add(new Circle(packed.centres().get(i), radiiMm[i]));
        }
        return new PackedBundle(
                diameters,
                circles,
                Length.roundedFromMillimetres(2 * packed.radiusMm(), RoundingMode.CEILING),
                Length.roundedFromMillimetres(2 * packed.lowerBoundMm(), RoundingMode.FLOOR),
                packed.certainty() == Certainty.PROVED);
    }
}
