package org.loomwright.core.electrical.joining;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Wiring;
import org.loomwright.core.electrical.simulation.Wiring.Conductor;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.routing.Allowances;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Two looms of one vehicle as one net. Devices of one id are one device (see {@link SharedDevice} for whose word counts); wires on one
 * point of it are joined there. Where each loom has a wire between the same two places and one of these belongs to each, the two wires
 * follow each other: they meet in a connector between the looms. Wires are named {@code loom:wire}, so that readings and findings tell
 * which loom they speak of. Cost: linear.
 *
 * @param wiring for {@link org.loomwright.core.electrical.simulation.Simulation}
 * @param findings what the looms say differently
 */
public record JoinedLooms(Wiring wiring, List<Finding> findings) {

    public JoinedLooms {
        findings = List.copyOf(findings);
    }

    /**
     * @param first a proven loom
     * @param second another loom of the same vehicle, with another name
     * @param catalogue the tables that they refer to
     * @param allowances take-up of the wires
     * @return both as one, or why they cannot be
     */
    public static Outcome<JoinedLooms> of(
            Loom first, Loom second, Catalogue catalogue, Allowances allowances) {
        List<Finding> reasons = incompatible(first, second);
        return reasons.isEmpty()
                ? Outcome.accepted(new Joining(first, second).join(catalogue, allowances))
                : Outcome.rejected(reasons);
    }

    /**
     * @param loom one of the looms
     * @param wire id of a wire in it
     * @return how that wire is called in the readings
     */
    public static String nameOf(Loom loom, String wire) {
        return loom.name() + ":" + wire;
    }

    private static List<Finding> incompatible(Loom first, Loom second) {
        List<Finding> reasons = new ArrayList<>();
        VehicleSheet one = first.document().vehicle();
        VehicleSheet other = second.document().vehicle();
        if (first.name().equals(second.name())) {
            reasons.add(
                    fault(
                            ThingKind.LOOM,
                            "Both looms are called '%s'; give them different names."
                                    .formatted(first.name())));
        }
        if (!one.system().equals(other.system())) {
            reasons.add(
                    fault(
                            ThingKind.VEHICLE,
                            "One loom belongs to a vehicle of %s, the other to one of %s."
                                    .formatted(one.system(), other.system())));
        }
        if (one.earth() != other.earth()) {
            reasons.add(
                    fault(
                            ThingKind.VEHICLE,
                            "One loom belongs to a vehicle with positive earth, the other to one"
                                    + " with negative earth."));
        }
        return reasons;
    }

    private static Finding fault(ThingKind kind, String text) {
        return Finding.fault("electrical.looms-do-not-join", Subject.of(kind, ""), text);
    }

    /** The work of joining. */
    private static final class Joining {

        private final Loom first;
        private final Loom second;
        private final Map<String, SharedDevice> shared = new TreeMap<>();
        private final Map<String, Device> devices = new TreeMap<>();
        private final List<Finding> findings = new ArrayList<>();

        Joining(Loom first, Loom second) {
            this.first = first;
            this.second = second;
            devices.putAll(second.devices());
            first.devices().forEach(this::add);
        }

        private void add(String id, Device device) {
            Device other = second.devices().get(id);
            if (other == null) {
                devices.put(id, device);
            } else {
                SharedDevice both = new SharedDevice(device, other);
                shared.put(id, both);
                devices.put(id, both.merged());
                findings.addAll(both.contradictions(first.name(), second.name()));
            }
        }

        JoinedLooms join(Catalogue catalogue, Allowances allowances) {
            Wiring one = Wiring.of(first, catalogue, allowances);
            Wiring other = Wiring.of(second, catalogue, allowances);
            Map<String, List<Conductor>> ofFirst = byPlaces(one);
            Map<String, List<Conductor>> ofSecond = byPlaces(other);
            List<Conductor> conductors = new ArrayList<>();
            one.conductors().forEach(it -> conductors.add(joined(it, first, ofSecond)));
            other.conductors().forEach(it -> conductors.add(joined(it, second, ofFirst)));
            return new JoinedLooms(
                    new Wiring(one.system(), devices, conductors),
                    findings.stream().sorted(Finding.WORST_FIRST).toList());
        }

        private static Map<String, List<Conductor>> byPlaces(Wiring wiring) {
            Map<String, List<Conductor>> byPlaces = new TreeMap<>();
            for (Conductor conductor : wiring.conductors()) {
                byPlaces.computeIfAbsent(placesOf(conductor), key -> new ArrayList<>())
                        .add(conductor);
            }
            return byPlaces;
        }

        private static String placesOf(Conductor conductor) {
            String from = conductor.from();
            String to = conductor.to();
            return from.compareTo(to) < 0 ? from + " and " + to : to + " and " + from;
        }

        /** The wire under its new name; its end at the other loom's device is the joint where that loom goes on to it. */
        private Conductor joined(Conductor wire, Loom loom, Map<String, List<Conductor>> ofOther) {
            String places = placesOf(wire);
            boolean goesOn = ofOther.containsKey(places) && isSplit(wire);
            String joint = "joint between " + places;
            boolean isFirst = loom == first;
            return new Conductor(
                    nameOf(loom, wire.wire()),
                    goesOn && !belongs(wire.from(), isFirst) ? joint : wire.from(),
                    goesOn && !belongs(wire.to(), isFirst) ? joint : wire.to(),
                    wire.size(),
                    wire.length());
        }

        private boolean isSplit(Conductor wire) {
            return belongs(wire.from(), true) != belongs(wire.to(), true);
        }

        /** Whether a device that both looms describe belongs to the first, or to the second. */
        private boolean belongs(String place, boolean toFirst) {
            SharedDevice both = shared.get(place.substring(0, place.indexOf('/')));
            return both != null && both.belongsToFirst() == toFirst;
        }
    }
}
