package org.loomwright.core.amendment;

import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddOpening;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.BreakOutBranch;
import org.loomwright.core.amendment.Amendment.ChangeCovering;
import org.loomwright.core.amendment.Amendment.ChangeDevice;
import org.loomwright.core.amendment.Amendment.ChangeLength;
import org.loomwright.core.amendment.Amendment.ChangeTerminal;
import org.loomwright.core.amendment.Amendment.ChangeVehicle;
import org.loomwright.core.amendment.Amendment.ExtendBranch;
import org.loomwright.core.amendment.Amendment.MoveWireEnd;
import org.loomwright.core.amendment.Amendment.RemoveOpening;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.amendment.Amendment.ReplaceWire;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.LoomSketch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * Amendments from a seed that all can be applied to a loom and do not depend on each other: everything that they name is stock,
 * no wire or opening is touched twice, no segment both changes its length and anything else, no breakout falls on another.
 */
final class RandomAmendments {

    private static final Finish TAPE =
            new Finish(
                    "cloth-tape", null, List.of(), null, 0, new Evidence(EvidenceKind.ASSUMED, ""));

    private final Random random;
    private final List<Segment> segments;
    private final List<Node> nodes;
    private final List<Device> devices;
    private final List<Wire> freeWires;
    private final List<String> freeOpenings = new ArrayList<>();
    private final Set<String> unchanging = new HashSet<>();
    private final Set<String> changing = new HashSet<>();
    private final Set<String> covered = new HashSet<>();
    private final Set<String> changedDevices = new HashSet<>();
    private final Set<Length> cutAt = new HashSet<>();
    private final List<Amendment> amendments = new ArrayList<>();
    private boolean vehicleChanged;

    private RandomAmendments(Loom loom, long seed) {
        this.random = new Random(seed);
        this.segments = List.copyOf(loom.segments().values());
        this.nodes = List.copyOf(loom.nodes().values());
        this.devices = List.copyOf(loom.devices().values());
        this.freeWires = new ArrayList<>(loom.wires().values());
        segments.forEach(
                segment -> segment.openings().forEach(opening -> freeOpenings.add(opening.id())));
    }

    static List<Amendment> independent(Loom loom, long seed, int count) {
        RandomAmendments all = new RandomAmendments(loom, seed);
        for (int i = 1; i <= count; i++) {
            all.add("A" + i);
        }
        return List.copyOf(all.amendments);
    }

    /** Breakouts only. */
    static List<Amendment> breakouts(Loom loom, long seed, int count) {
        RandomAmendments all = new RandomAmendments(loom, seed);
        for (int i = 1; i <= count; i++) {
            all.amendments.add(all.breakOut("A" + i));
        }
        return List.copyOf(all.amendments);
    }

    private void add(String id) {
        switch (random.nextInt(14)) {
            case 0 -> amendments.add(breakOut(id));
            case 1 -> amendments.add(extend(id));
            case 2 -> amendments.add(addOpening(id));
            case 3 -> amendments.add(addDevice(id));
            case 4 -> changeLength(id);
            case 5 -> changeCovering(id);
            case 6 -> removeOpening(id);
            case 7, 8 -> amendments.add(addWire(id));
            case 9 -> changeDevice(id);
            case 10 -> changeVehicle(id);
            default -> changeWire(id);
        }
    }

    private BreakOutBranch breakOut(String id) {
        Segment segment = unchanging();
        Length at;
        do {
            long within = segment.length().micrometres() - 1;
            at = Length.ofMicrometres(1 + random.nextLong(within));
        } while (!cutAt.add(at));
        return new BreakOutBranch(
                id,
                "",
                segment.id(),
                at,
                new Node("N-" + id, "breakout"),
                "F-" + id,
                LoomSketch.plainSegment("B-" + id, "N-" + id, "E-" + id, 200),
                new Node("E-" + id, "end"));
    }

    private ExtendBranch extend(String id) {
        Segment branch =
                LoomSketch.plainSegment("B-" + id, pick(nodes).id(), "E-" + id, 200)
                        .withOpenings(List.of(LoomSketch.grommet("P-" + id, 50)));
        return new ExtendBranch(id, "", branch, new Node("E-" + id, "end"));
    }

    private AddOpening addOpening(String id) {
        Segment segment = unchanging();
        Length position = Length.ofMicrometres(random.nextLong(segment.length().micrometres() + 1));
        Opening grommet = LoomSketch.grommet("P-" + id, 0);
        return new AddOpening(
                id,
                "",
                segment.id(),
                new Opening(
                        grommet.id(),
                        grommet.name(),
                        grommet.kind(),
                        position,
                        grommet.clearDiameter(),
                        grommet.passes()));
    }

    private AddDevice addDevice(String id) {
        return new AddDevice(
                id,
                "",
                LoomSketch.plainDevice(
                        "X-" + id, DeviceKind.RELAY, pick(nodes).id(), pick(nodes).id()));
    }

    private AddWire addWire(String id) {
        int first = random.nextInt(devices.size());
        int second = (first + 1 + random.nextInt(devices.size() - 1)) % devices.size();
        return new AddWire(
                id,
                "",
                LoomSketch.plainWire(
                        "W-" + id, "GN", place(devices.get(first)), place(devices.get(second))));
    }

    private String place(Device device) {
        return device.id() + "/" + pick(device.points()).name();
    }

    private void changeLength(String id) {
        Segment segment = pick(segments);
        boolean free = segment.openings().isEmpty() && !unchanging.contains(segment.id());
        if (free && changing.size() < segments.size() / 2 && changing.add(segment.id())) {
            Length longer = segment.length().plus(LoomSketch.mm(1 + random.nextInt(99)));
            amendments.add(new ChangeLength(id, "", segment.id(), longer));
        }
    }

    private void changeCovering(String id) {
        Segment segment = unchanging();
        if (covered.add(segment.id())) {
            amendments.add(new ChangeCovering(id, "", segment.id(), TAPE));
        }
    }

    private void removeOpening(String id) {
        if (!freeOpenings.isEmpty()) {
            String opening = freeOpenings.remove(random.nextInt(freeOpenings.size()));
            amendments.add(new RemoveOpening(id, "", opening));
        }
    }

    private void changeDevice(String id) {
        Device device = pick(devices);
        if (changedDevices.add(device.id())) {
            amendments.add(
                    new ChangeDevice(
                            id,
                            "",
                            device.id(),
                            "new " + device.name(),
                            device.kind(),
                            Current.ofMilliamperes(9_001),
                            device.particulars()));
        }
    }

    private void changeVehicle(String id) {
        if (vehicleChanged) {
            changeWire(id);
        } else {
            vehicleChanged = true;
            amendments.add(
                    new ChangeVehicle(
                            id, "", EarthPolarity.NEGATIVE, Voltage.ofMillivolts(12_001)));
        }
    }

    private void changeWire(String id) {
        if (freeWires.isEmpty()) {
            return;
        }
        Wire wire = freeWires.remove(random.nextInt(freeWires.size()));
        Side side = pick(List.of(Side.values()));
        switch (random.nextInt(4)) {
            case 0 -> amendments.add(new RemoveWire(id, "", wire.id()));
            case 1 ->
                    amendments.add(
                            new ReplaceWire(id, "", wire.id(), WireColour.parse("RB"), "65/0.30"));
            case 2 -> amendments.add(new ChangeTerminal(id, "", wire.id(), side, "ring-8"));
            default -> moveEnd(id, wire, side);
        }
    }

    private void moveEnd(String id, Wire wire, Side side) {
        WireEnd to = LoomSketch.end(place(pick(devices)), "ring-8");
        if (!wire.withEnd(side, to).a().isOnSamePointAs(wire.withEnd(side, to).b())) {
            amendments.add(new MoveWireEnd(id, "", wire.id(), side, to));
        }
    }

    /** A segment whose length does not change; it may not change later either. */
    private Segment unchanging() {
        Segment segment;
        do {
            segment = pick(segments);
        } while (changing.contains(segment.id()));
        unchanging.add(segment.id());
        return segment;
    }

    private <T> T pick(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
