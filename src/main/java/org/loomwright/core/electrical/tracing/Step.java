package org.loomwright.core.electrical.tracing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.loom.Wire;

/**
 * One step from a node of the net to another: along a wire, or through something inside a device.
 *
 * @param from node where it begins
 * @param to node where it ends
 * @param wire the wire, or null
 * @param passed what it leads through, or null
 */
record Step(String from, String to, @Nullable String wire, @Nullable Passed passed) {

    static Step along(Wire wire, boolean fromA) {
        String a = wire.a().place();
        String b = wire.b().place();
        return new Step(fromA ? a : b, fromA ? b : a, wire.id(), null);
    }

    static Step through(Placed element, boolean forwards) {
        String device = element.device().id();
        return forwards
                ? new Step(
                        element.fromNode(),
                        element.toNode(),
                        null,
                        new Passed(device, element.from(), element.to(), element.element()))
                : new Step(
                        element.toNode(),
                        element.fromNode(),
                        null,
                        new Passed(device, element.to(), element.from(), element.element()));
    }

    boolean isThrough(Element element) {
        return passed != null && passed.element() == element;
    }

    boolean isLoad() {
        return isThrough(Element.LOAD) || isThrough(Element.COIL) || isThrough(Element.FIELD);
    }

    boolean isContact() {
        return isThrough(Element.CONTACT) || isThrough(Element.MAKE) || isThrough(Element.BREAK);
    }

    /** Whether it is more than copper and an earth screw. */
    boolean isConditional() {
        return passed != null && passed.element() != Element.EARTH;
    }
}
