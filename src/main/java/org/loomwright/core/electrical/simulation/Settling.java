package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.network.Branch;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.network.Network;
import org.loomwright.core.electrical.network.NetworkSolution;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Solves the net again and again until relays, flashers and generators are in the state that the solution calls for. Relays move first;
 * generators only while no relay moves. A state that comes back means that something never comes to rest: a relay that cuts its own
 * coil off, a buzzer.
 */
final class Settling {

    private final Circuit circuit;
    private final Scenario scenario;
    private final ElectricalSettings settings;
    private final Voltage system;
    private final LinearSolver solver;

    Settling(
            Circuit circuit,
            Scenario scenario,
            ElectricalSettings settings,
            Voltage system,
            LinearSolver solver) {
        this.circuit = circuit;
        this.scenario = scenario;
        this.settings = settings;
        this.system = system;
        this.solver = solver;
    }

    /**
     * Where it ended.
     *
     * @param state the last state
     * @param wires the branches that are wires
     * @param network the net in that state: the wires and the elements
     * @param elements the elements that have a branch in it
     * @param solution its solution
     * @param restless devices that never come to rest, in the order of their ids
     */
    record Settled(
            State state,
            List<Branch> wires,
            Network network,
            List<Placed> elements,
            NetworkSolution solution,
            List<String> restless) {

        /** The branch of one of its elements or wires. */
        Branch branch(String id) {
            return network.findBranch(id).orElseThrow();
        }
    }

    Settled settle() {
        List<Branch> wires = circuit.wires(scenario.conductors());
        State state = first();
        Set<State> seen = new LinkedHashSet<>();
        while (true) {
            Settled now = solve(wires, state);
            State next = next(now);
            if (next.equals(state)) {
                return now;
            }
            seen.add(state);
            if (seen.contains(next)) {
                return new Settled(
                        state,
                        wires,
                        now.network(),
                        now.elements(),
                        now.solution(),
                        changing(seen, next));
            }
            state = next;
        }
    }

    private State first() {
        Map<String, State.Mode> modes = new HashMap<>();
        for (Placed element : circuit.elements()) {
            if (element.element() == Element.GENERATOR) {
                boolean gives = mostOf(element).milliamperes() > 0;
                modes.put(element.device().id(), gives ? firstMode(element) : State.Mode.STANDING);
            }
        }
        return new State(Set.of(), modes);
    }

    private State.Mode firstMode(Placed generator) {
        if (circuit.findField(generator).isEmpty()) {
            return State.Mode.REGULATING;
        }
        return generator.device().kind() == DeviceKind.DYNAMO
                ? State.Mode.BUILDING
                : State.Mode.UNEXCITED;
    }

    private Settled solve(List<Branch> wires, State state) {
        List<Branch> net = new ArrayList<>(wires);
        List<Placed> joined = new ArrayList<>();
        for (Placed element : circuit.elements()) {
            circuit.branch(element, scenario, state)
                    .ifPresent(
                            branch -> {
                                net.add(branch);
                                joined.add(element);
                            });
        }
        Network network = new Network(Behaviour.BODY, net);
        return new Settled(state, wires, network, joined, network.solve(solver), List.of());
    }

    private State next(Settled now) {
        Set<String> pulledIn = new HashSet<>();
        for (Placed element : now.elements()) {
            if (pullsIn(element, now)) {
                pulledIn.add(element.device().id());
            }
        }
        if (!pulledIn.equals(now.state().pulledIn())) {
            return new State(pulledIn, now.state().generators());
        }
        Map<String, State.Mode> modes = new HashMap<>(now.state().generators());
        for (Placed element : circuit.elements()) {
            if (element.element() == Element.GENERATOR) {
                modes.put(element.device().id(), modeAfter(element, now));
            }
        }
        return new State(pulledIn, modes);
    }

    private boolean pullsIn(Placed element, Settled now) {
        return switch (element.element()) {
            case COIL -> {
                Branch coil = now.branch(element.id());
                boolean held = now.state().pulledIn().contains(element.device().id());
                Ratio share = held ? settings.dropOut() : settings.pullIn();
                yield Math.abs(now.solution().across(coil).millivolts())
                        >= share.toDouble() * system.millivolts();
            }
            case SENSE ->
                    Math.abs(now.solution().current(element.id()).milliamperes())
                            >= settings.sense().milliamperes();
            case SOURCE,
                    GENERATOR,
                    CUT_OUT,
                    LINK,
                    FUSE,
                    CONTACT,
                    MAKE,
                    BREAK,
                    ENGINE_OFF,
                    FIELD,
                    LOAD,
                    EARTH,
                    NONE ->
                    false;
        };
    }

    private State.Mode modeAfter(Placed generator, Settled now) {
        State.Mode mode = now.state().modeOf(generator);
        return switch (mode) {
            case STANDING -> mode;
            case UNEXCITED, BUILDING ->
                    isExcited(generator, now) ? State.Mode.REGULATING : State.Mode.UNEXCITED;
            case REGULATING ->
                    losesField(generator, now)
                            ? State.Mode.UNEXCITED
                            : afterRegulating(generator, now);
            case LIMITED ->
                    losesField(generator, now)
                            ? State.Mode.UNEXCITED
                            : afterLimited(generator, now);
        };
    }

    /** An alternator's field feeds itself once it works; a dynamo's goes on needing its wire. */
    private boolean losesField(Placed generator, Settled now) {
        return generator.device().kind() == DeviceKind.DYNAMO && !isExcited(generator, now);
    }

    private boolean isExcited(Placed generator, Settled now) {
        return circuit.findField(generator)
                .map(field -> now.solution().current(field.id()))
                .map(current -> Math.abs(current.milliamperes()))
                .map(current -> current >= settings.leastExciting().milliamperes())
                .orElse(true);
    }

    /** A generator that would have to give more than it can is limited; one that current flows into is cut out. */
    private State.Mode afterRegulating(Placed generator, Settled now) {
        long given =
                now.solution().current(generator.id()).milliamperes()
                        - circuit.ownField(generator).milliamperes();
        if (given < 0) {
            return State.Mode.STANDING;
        }
        boolean isTooMuch = given > mostOf(generator).milliamperes();
        return isTooMuch ? State.Mode.LIMITED : State.Mode.REGULATING;
    }

    /** A limited generator whose voltage rises to what it would keep goes back to keeping it. */
    private State.Mode afterLimited(Placed generator, Settled now) {
        double regulated = State.scaled(settings.regulated(), system).toDoubleVolts();
        double dropped =
                mostOf(generator).plus(circuit.ownField(generator)).toDoubleAmperes()
                        * settings.generatorResistance().toDoubleOhms();
        boolean isRelieved = liveVolts(generator, now) > regulated - dropped;
        return isRelieved ? State.Mode.REGULATING : State.Mode.LIMITED;
    }

    private Current mostOf(Placed generator) {
        return State.outputOf(generator, scenario.engine(), settings);
    }

    private static double liveVolts(Placed generator, Settled now) {
        return now.network()
                .findBranch(generator.id())
                .map(branch -> -now.solution().across(branch).toDoubleVolts())
                .orElse(0.0);
    }

    private static List<String> changing(Set<State> seen, State again) {
        Set<String> changing = new TreeSet<>();
        boolean inCycle = false;
        for (State state : seen) {
            inCycle |= state.equals(again);
            if (inCycle) {
                changing.addAll(difference(state.pulledIn(), again.pulledIn()));
                state.generators()
                        .forEach(
                                (device, mode) -> {
                                    if (mode != again.generators().get(device)) {
                                        changing.add(device);
                                    }
                                });
            }
        }
        return List.copyOf(changing);
    }

    private static Set<String> difference(Set<String> one, Set<String> other) {
        Set<String> difference = new HashSet<>(one);
        other.forEach(
                device -> {
                    if (!difference.remove(device)) {
                        difference.add(device);
                    }
                });
        return difference;
    }
}
