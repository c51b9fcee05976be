package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.network.Branch;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.network.Network;
import org.loomwright.core.electrical.network.NodeShorts;
import org.loomwright.core.electrical.network.NodeShorts.BranchCurrent;
import org.loomwright.core.electrical.network.NodeShorts.NodeShort;
import org.loomwright.core.electrical.simulation.Settling.Settled;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A loom in a scenario, ready to be asked what flows when a point of it touches the body. The moment after the contact: relays have not
 * moved yet, conductors are as warm as before. A generator that works gives all that it can and no more; a cut-out opens at once if
 * current would flow back through it. Contacts and wires without resistance count as {@link Network#LEAST}. Not thread-safe.
 */
public final class ShortedNet {

    private static final Ratio NOTEWORTHY = new Ratio(20_000);

    private final Scenario scenario;
    private final Map<String, Wiring.Conductor> wires = new LinkedHashMap<>();
    private final Map<String, Placed> elements = new LinkedHashMap<>();
    private final NodeShorts joined;
    private final Optional<NodeShorts> cutOut;

    /**
     * What a short draws.
     *
     * @param place {@code device/point} that touches the body
     * @param open its voltage against the body before
     * @param current what flows there into the body
     * @param wires wires in which the short causes at least 2 % of its current
     * @param elements elements in which it does
     */
    public record Drawn(
            String place,
            Voltage open,
            Current current,
            List<Share<Wiring.Conductor>> wires,
            List<Share<Placed>> elements) {

        public Drawn {
            wires = List.copyOf(wires);
            elements = List.copyOf(elements);
        }
    }

    /**
     * What flows in one wire or element during a short.
     *
     * @param thing a wire or an element
     * @param current all of it: of a wire from its end A to its end B, of an element from beginning to end
     * @param caused how much of it the short causes
     * @param <T> what sort of thing
     */
    public record Share<T>(T thing, Current current, Current caused) {}

    ShortedNet(
            Circuit circuit,
            Collection<Wiring.Conductor> wires,
            Settled settled,
            Scenario scenario,
            LinearSolver solver) {
        this.scenario = scenario;
        wires.forEach(wire -> this.wires.put(Circuit.idOf(wire), wire));
        settled.elements().forEach(element -> elements.put(element.id(), element));
        State state = settled.state().atFullOutput();
        List<Branch> net = new ArrayList<>(settled.wires());
        for (Placed element : settled.elements()) {
            circuit.branch(element, scenario, state).ifPresent(net::add);
        }
        joined = shorts(net, solver);
        List<Branch> cut = net.stream().filter(branch -> !isCutOut(branch.id())).toList();
        cutOut = cut.size() == net.size() ? Optional.empty() : Optional.of(shorts(cut, solver));
    }

    private static NodeShorts shorts(List<Branch> net, LinearSolver solver) {
        List<Branch> real = net.stream().map(ShortedNet::withResistance).toList();
        return new Network(Behaviour.BODY, real).shorts(solver);
    }

    private static Branch withResistance(Branch branch) {
        return branch.resistance().compareTo(Network.LEAST) < 0
                ? Branch.resistor(branch.id(), branch.from(), branch.to(), Network.LEAST)
                : branch;
    }

    private boolean isCutOut(String branch) {
        Placed element = elements.get(branch);
        return element != null && element.element() == Element.CUT_OUT;
    }

    /**
     * @param place {@code device/point}
     * @return its voltage against the body before, of two where a cut-out may open the one farther from zero
     */
    public Voltage open(String place) {
        Voltage open = joined.open(place);
        Voltage cut = cutOut.map(net -> net.open(place)).orElse(Voltage.ZERO);
        return Math.abs(cut.millivolts()) > Math.abs(open.millivolts()) ? cut : open;
    }

    /** @return the scenario that the loom is in */
    public Scenario scenario() {
        return scenario;
    }

    /**
     * @param place {@code device/point}
     * @return what flows when it touches the body
     */
    public Drawn at(String place) {
        NodeShort shorted = joined.at(place);
        List<BranchCurrent> carrying = shorted.carrying(NOTEWORTHY);
        if (cutOut.isPresent() && carrying.stream().anyMatch(this::flowsBackThroughCutOut)) {
            shorted = cutOut.get().at(place);
            carrying = shorted.carrying(NOTEWORTHY);
        }
        return drawn(place, shorted, carrying);
    }

    private boolean flowsBackThroughCutOut(BranchCurrent branch) {
        return branch.current().milliamperes() < 0 && isCutOut(branch.branch());
    }

    private Drawn drawn(String place, NodeShort shorted, List<BranchCurrent> carrying) {
        List<Share<Wiring.Conductor>> inWires = new ArrayList<>();
        List<Share<Placed>> inElements = new ArrayList<>();
        for (BranchCurrent branch : carrying) {
            Wiring.Conductor wire = wires.get(branch.branch());
            Placed element = elements.get(branch.branch());
            if (wire != null) {
                inWires.add(new Share<>(wire, branch.current(), branch.caused()));
            } else if (element != null) {
                inElements.add(new Share<>(element, branch.current(), branch.caused()));
            }
        }
        return new Drawn(place, shorted.open(), shorted.current(), inWires, inElements);
    }
}
