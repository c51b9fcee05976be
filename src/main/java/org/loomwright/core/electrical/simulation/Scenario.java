package org.loomwright.core.electrical.simulation;

import org.loomwright.core.quantity.Temperature;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * A state of the vehicle: which contacts are closed, how the engine runs, how warm the conductors and the air round them are.
 *
 * @param name what a person calls it, for example {@code winter night}
 * @param closed by switch the points that its contacts join to its feed (or to the body, where it has no feed)
 * @param engine how the engine runs
 * @param conductors temperature of the metal of the wires, {@link #COLDEST} to {@link #HOTTEST}
 * @param ambient temperature of the air round them, in the same range and no higher; it decides what the wires may carry
 */
public record Scenario(
        String name,
        Map<String, Set<String>> closed,
        Engine engine,
        Temperature conductors,
        Temperature ambient) {

    /** Own choice: colder than any garage. */
    public static final Temperature COLDEST = Temperature.ofCelsius(-60);

    /** Own choice: hotter than any insulation stands. */
    public static final Temperature HOTTEST = Temperature.ofCelsius(200);

    /** How the engine runs. */
    public enum Engine {
        /** It stands. */
        OFF,
        /** It turns slowly. */
        IDLE,
        /** It turns fast enough for the generator's full output. */
        AT_SPEED
    }

    public Scenario {
        Map<String, Set<String>> copy = new LinkedHashMap<>();
        closed.forEach((device, points) -> copy.put(device, Set.copyOf(points)));
        closed = Map.copyOf(copy);
    }

    /** A scenario in which the air is as warm as the conductors. */
    public Scenario(
            String name, Map<String, Set<String>> closed, Engine engine, Temperature conductors) {
        this(name, closed, engine, conductors, conductors);
    }

    /** @return a scenario with every switch off, in which the air is as warm as the conductors */
    public static Scenario of(String name, Engine engine, Temperature conductors) {
        return new Scenario(name, Map.of(), engine, conductors);
    }

    /**
     * @param device id of a switch
     * @param points which of its contacts are closed, for example {@code SIDE, HEAD}
     * @return the same with that switch in that position
     */
    public Scenario with(String device, String... points) {
        Map<String, Set<String>> more = new LinkedHashMap<>(closed);
        more.put(device, Set.of(points));
        return new Scenario(name, more, engine, conductors, ambient);
    }

    boolean isClosed(Placed contact) {
        Set<String> points = closed.getOrDefault(contact.device().id(), Set.of());
        return points.contains(contact.to()) || points.contains(contact.from());
    }
}
