package org.loomwright.core.bundle;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.geometry.Circle;
import org.loomwright.core.quantity.Length;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The cross-section of a segment with the wires named: which colour and size lies where. Wires of one diameter are interchangeable
 * in the packing; they are dealt out in the order of their classes, so the view is the same every time. It shows what must fit, not
 * where a bench hand will lay each wire.
 *
 * @param wires each wire with its place, the bundle's centre being the origin
 */
public record BundleView(List<PlacedWire> wires) {

    public BundleView {
        wires = List.copyOf(wires);
    }

    /**
     * One wire in the cross-section.
     *
     * @param wireClass its colour and size
     * @param circle its place and radius
     */
    public record PlacedWire(WireClass wireClass, Circle circle) {}

    /**
     * @param bundle a segment's bundle
     * @param catalogue the tables that its wires refer to
     * @return its cross-section
     */
    public static BundleView of(SegmentBundle bundle, Catalogue catalogue) {
        Map<Length, Deque<Circle>> free = new HashMap<>();
        PackedBundle packed = bundle.packed();
        for (int i = 0; i < packed.circles().size(); i++) {
            free.computeIfAbsent(packed.diameters().get(i), d -> new ArrayDeque<>())
                    .add(packed.circles().get(i));
        }
        List<PlacedWire> placed = new ArrayList<>();
        bundle.counts()
                .byClass()
                .forEach(
                        (wireClass, count) -> {
                            Length diameter = catalogue.getSize(wireClass.size()).outsideDiameter();
                            Deque<Circle> places = free.getOrDefault(diameter, new ArrayDeque<>());
                            for (int i = 0; i < count; i++) {
                                placed.add(new PlacedWire(wireClass, places.removeFirst()));
                            }
                        });
        return new BundleView(placed);
    }
}
