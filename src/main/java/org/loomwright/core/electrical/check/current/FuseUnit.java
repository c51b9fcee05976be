package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.electrical.FuseMarking;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Current;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A place for a fuse.
 *
 * @param device the fuse box or holder
 * @param from one of its points
 * @param to the other
 * @param fuse what its marking means, or null where nobody said which is fitted
 * @param wires live wires whose last fuse it is
 */
record FuseUnit(
        Device device, String from, String to, @Nullable FuseRating fuse, List<String> wires) {

    /** Every place for a fuse that the readings show, in the order of devices and points. */
    static List<FuseUnit> of(
            Loom loom, Tracing tracing, ElectricalTables tables, List<Observed> scenarios) {
        Map<String, List<WireTrace>> behind = behindFuses(tracing);
        TreeMap<String, FuseUnit> units = new TreeMap<>();
        for (Observed scenario : scenarios) {
            for (ElementReading reading : scenario.flow().readings().of(Element.FUSE)) {
                units.computeIfAbsent(
                        Flow.place(reading.device(), reading.from()),
                        place -> of(loom, behind, tables, reading));
            }
        }
        return List.copyOf(units.values());
    }

    /** Live wires by the device with the last fuse on their way, in the order of their ids. */
    private static Map<String, List<WireTrace>> behindFuses(Tracing tracing) {
        Map<String, List<WireTrace>> behind = new HashMap<>();
        for (WireTrace trace : tracing.all()) {
            if (trace.role() == Role.LIVE) {
                trace.fuse()
                        .map(Passed::device)
                        .map(device -> behind.computeIfAbsent(device, id -> new ArrayList<>()))
                        .ifPresent(wires -> wires.add(trace));
            }
        }
        return behind;
    }

    private static FuseUnit of(
            Loom loom,
            Map<String, List<WireTrace>> behind,
            ElectricalTables tables,
            ElementReading reading) {
        Device device = loom.getDevice(reading.device());
        FuseRating fuse =
                device.particulars().fuses().stream()
                        .filter(fitted -> isBetween(fitted, reading.from(), reading.to()))
                        .findFirst()
                        .map(fitted -> FuseMarking.read(tables, fitted.style(), fitted.marked()))
                        .orElse(null);
        List<String> wires =
                behind.getOrDefault(device.id(), List.of()).stream()
                        .filter(trace -> trace.fuse().filter(it -> is(it, reading)).isPresent())
                        .map(WireTrace::wire)
                        .toList();
        return new FuseUnit(device, reading.from(), reading.to(), fuse, wires);
    }

    private static boolean isBetween(FittedFuse fitted, String from, String to) {
        return fitted.from().equals(from) && fitted.to().equals(to)
                || fitted.from().equals(to) && fitted.to().equals(from);
    }

    private static boolean is(Passed passed, ElementReading reading) {
        return passed.device().equals(reading.device())
                && (passed.from().equals(reading.from()) && passed.to().equals(reading.to())
                        || passed.from().equals(reading.to())
                                && passed.to().equals(reading.from()));
    }

    /** What flows through it in that scenario. */
    Current current(Observed scenario) {
        long most = 0;
        for (ElementReading reading : scenario.flow().ofDevice(device.id())) {
            if (reading.element() == Element.FUSE && reading.from().equals(from)) {
                most = Math.max(most, Math.abs(reading.current().milliamperes()));
            }
        }
        return Current.ofMilliamperes(most);
    }

    boolean isFilledBy(FittedFuse fitted) {
        return isBetween(fitted, from, to);
    }

    boolean isGlass() {
        return fuse != null && fuse.style() == FuseStyle.GLASS_BLOW_MARKED;
    }

    /** For example {@code The fuse from A1 to A2 of FUSE-BOX (fuse box)}. */
    String words() {
        return "The fuse from %s to %s of %s".formatted(from, to, Words.of(device));
    }

    /** Style and marking, for example {@code glass, marked with its blow value, 35 A}. */
    static String marking(FuseRating fuse) {
        return "%s, marked %s".formatted(fuse.style().words(), Words.of(fuse.marked()));
    }
}
