package org.loomwright.core.electrical.simulation;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.core.routing.Allowances;
import org.loomwright.core.routing.CutLength;
import org.loomwright.core.routing.CutLengths;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a simulation has to know of one loom, or of several that are plugged together: which devices there are and what joins their
 * points. Where a wire lies no longer matters.
 *
 * @param system nominal system voltage
 * @param devices by id, in the order of their ids
 * @param conductors the wires, in the order of their ids
 */
public record Wiring(Voltage system, Map<String, Device> devices, List<Conductor> conductors) {

    /**
     * A wire with its length.
     *
     * @param wire id, unique in the wiring
     * @param from {@code device/point}, or the name of a joint that belongs to no device
     * @param to the other end
     * @param size designation of the conductor size
     * @param length from tip to tip, with take-up
     */
    public record Conductor(String wire, String from, String to, String size, Length length) {}

    public Wiring {
        devices = Collections.unmodifiableMap(new LinkedHashMap<>(devices));
        conductors = List.copyOf(conductors);
    }

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     * @param allowances take-up of the wires
     * @return its wiring
     */
    public static Wiring of(Loom loom, Catalogue catalogue, Allowances allowances) {
        CutLengths cuts = new CutLengths(loom, new Routes(loom), catalogue, allowances, Map.of());
        List<Conductor> conductors = new ArrayList<>();
        for (Wire wire : loom.wires().values()) {
            CutLength cut = cuts.of(wire);
            conductors.add(
                    new Conductor(
                            wire.id(),
                            wire.a().place(),
                            wire.b().place(),
                            wire.size(),
                            cut.measured().plus(cut.takeUp())));
        }
        return new Wiring(loom.document().vehicle().system(), loom.devices(), conductors);
    }
}
