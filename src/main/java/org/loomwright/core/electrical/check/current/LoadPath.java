package org.loomwright.core.electrical.check.current;

import org.loomwright.core.electrical.VoltageDrop;
import org.loomwright.core.electrical.check.current.Flow.Edge;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The way of a load's current. By Kirchhoff's voltage law what is lost does not depend on which of several ways is walked; where it is
 * lost is told of the one that carries most.
 *
 * @param load the load
 * @param source the source that gives it most of its current
 * @param out from the source to the load
 * @param back from the load to the earthed side of the source
 */
record LoadPath(ElementReading load, Edge source, List<Edge> out, List<Edge> back) {

    LoadPath {
        out = List.copyOf(out);
        back = List.copyOf(back);
    }

    /** Between the terminals of the source. */
    Voltage supply() {
        return Voltage.ofMillivolts(-source.millivolts());
    }

    Voltage lost() {
        return Voltage.ofMillivolts(supply().millivolts() - Math.abs(load.across().millivolts()));
    }

    Ratio share() {
        return VoltageDrop.share(lost(), supply());
    }

    Current current() {
        return Current.ofMilliamperes(Math.abs(load.current().milliamperes()));
    }

    List<Edge> edges() {
        List<Edge> all = new ArrayList<>(out);
        all.addAll(back);
        return all;
    }

    /** The wire that loses most, the one nearer the source where two lose the same. */
    Optional<Edge> worstWire() {
        return edges().stream()
                .filter(edge -> edge.wire() != null)
                .max(Comparator.comparingLong(Edge::millivolts));
    }

    /** What switches, fuses, links and earth screws lose together. */
    Voltage lostInContacts() {
        return Voltage.ofMillivolts(
                edges().stream()
                        .filter(edge -> edge.wire() == null)
                        .mapToLong(Edge::millivolts)
                        .sum());
    }

    boolean leadsThrough(Edge edge) {
        return edges().stream().anyMatch(edge::isSameAs);
    }

    boolean leadsThroughWire(String wire) {
        return edges().stream().anyMatch(edge -> wire.equals(edge.wire()));
    }

    boolean leadsThroughDevice(String device) {
        return edges().stream()
                .anyMatch(edge -> edge.element() != null && edge.element().device().equals(device));
    }

    /** Whether it is a battery that is charged. */
    boolean charges() {
        return load.element() == Element.SOURCE;
    }

    /** Names the load whatever the scenario. */
    String key() {
        return load.device() + " " + load.from() + " " + load.to();
    }
}
