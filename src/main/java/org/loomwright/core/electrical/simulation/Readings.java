package org.loomwright.core.electrical.simulation;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Voltage;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a meter would show in one scenario.
 *
 * @param scenario the scenario
 * @param wires every wire, in the order of their ids
 * @param elements every element that is joined, by device
 * @param points voltage of every point {@code device/point} against the body in the sense of the supply; points that nothing connects
 *     with the body are missing
 * @param pulledIn relays and flashers that have pulled in
 * @param findings what was noticed on the way, the worst first
 */
public record Readings(
        Scenario scenario,
        List<WireReading> wires,
        List<ElementReading> elements,
        Map<String, Voltage> points,
        Set<String> pulledIn,
        List<Finding> findings) {

    /**
     * One wire.
     *
     * @param wire its id
     * @param current from its end A to its end B
     * @param drop voltage at end A less voltage at end B
     */
    public record WireReading(String wire, Current current, Voltage drop) {}

    /**
     * One element of a device.
     *
     * @param device id of the device
     * @param element what it is
     * @param from the point where it begins
     * @param to the point where it ends, or {@code body}
     * @param across voltage at its beginning less voltage at its end
     * @param current from beginning to end; of a source what it gives, of a dynamo beside the current of its own field
     */
    public record ElementReading(
            String device,
            Element element,
            String from,
            String to,
            Voltage across,
            Current current) {}

    public Readings {
        wires = List.copyOf(wires);
        elements = List.copyOf(elements);
        points = Collections.unmodifiableMap(new LinkedHashMap<>(points));
        pulledIn = Set.copyOf(pulledIn);
        findings = List.copyOf(findings);
    }

    /**
     * @param id of a wire
     * @return its reading
     * @throws IllegalArgumentException if there is no such wire
     */
    public WireReading getWire(String id) {
        return wires.stream()
                .filter(reading -> reading.wire().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no wire " + id));
    }

    /** @return the same with more findings, the worst first */
    public Readings noting(List<Finding> more) {
        List<Finding> all =
                Stream.concat(findings.stream(), more.stream())
                        .sorted(Finding.WORST_FIRST)
                        .toList();
        return new Readings(scenario, wires, elements, points, pulledIn, all);
    }

    /** @return the joined elements of that sort, for example every load or every fuse */
    public List<ElementReading> of(Element element) {
        return elements.stream().filter(reading -> reading.element() == element).toList();
    }

    /** @return the joined elements of that device */
    public List<ElementReading> ofDevice(String device) {
        return elements.stream().filter(reading -> reading.device().equals(device)).toList();
    }

    /** @return what all loads and coils together draw */
    public Current drawn() {
        return elements.stream()
                .filter(
                        reading ->
                                reading.element() == Element.LOAD
                                        || reading.element() == Element.COIL)
                .map(reading -> Current.ofMilliamperes(Math.abs(reading.current().milliamperes())))
                .reduce(Current.ZERO, Current::plus);
    }

    /**
     * What goes through a working flasher is lit for a share of the time only; all other readings are those of the lit moment.
     *
     * @param flasherDuty share of the time that flashing lamps are lit
     * @return what all loads and coils together draw in the mean
     */
    public Current drawnOnAverage(Ratio flasherDuty) {
        Set<String> working = new HashSet<>();
        for (ElementReading reading : of(Element.SENSE)) {
            if (pulledIn.contains(reading.device())) {
                working.add(reading.device());
            }
        }
        long flashing =
                elements.stream()
                        .filter(reading -> working.contains(reading.device()))
                        .filter(reading -> isContact(reading.element()))
                        .mapToLong(reading -> Math.abs(reading.current().milliamperes()))
                        .sum();
        double dark = 1 - flasherDuty.toDouble();
        return Current.ofMilliamperes(drawn().milliamperes() - Math.round(dark * flashing));
    }

    private static boolean isContact(Element element) {
        return element == Element.SENSE || element == Element.MAKE;
    }
}
