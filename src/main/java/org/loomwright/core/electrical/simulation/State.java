package org.loomwright.core.electrical.simulation;

import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * What has to be known before the net can be solved, and follows from its solution.
 *
 * @param pulledIn devices whose contacts have moved
 * @param generators how each generator works
 */
record State(Set<String> pulledIn, Map<String, Mode> generators) {

    /** How a generator works. */
    enum Mode {
        /** It gives nothing: the engine is too slow, or its cut-out has opened. */
        STANDING,
        /** It keeps its voltage. */
        REGULATING,
        /** It gives all that it can and its voltage falls. */
        LIMITED
    }

    State {
        pulledIn = Set.copyOf(pulledIn);
        generators = Map.copyOf(generators);
    }

    boolean generates() {
        return generators.values().stream().anyMatch(mode -> mode != Mode.STANDING);
    }

    Mode modeOf(Placed generator) {
        return generators.getOrDefault(generator.device().id(), Mode.STANDING);
    }

    /** The same with every generator that works giving all that it can. */
    State atFullOutput() {
        Map<String, Mode> full = new HashMap<>(generators);
        full.replaceAll((device, mode) -> mode == Mode.STANDING ? mode : Mode.LIMITED);
        return new State(pulledIn, full);
    }

    /** What the generator can give while the engine runs like that. */
    static Current outputOf(Placed generator, Scenario.Engine engine, ElectricalSettings settings) {
        ElectricalSettings.GeneratorOutput usual =
                generator.device().kind() == DeviceKind.DYNAMO
                        ? settings.dynamo()
                        : settings.alternator();
        ElectricalSettings.GeneratorOutput output =
                settings.generators().getOrDefault(generator.device().id(), usual);
        return switch (engine) {
            case OFF -> Current.ZERO;
            case IDLE -> output.idle();
            case AT_SPEED -> output.atSpeed();
        };
    }

    /** A voltage of a 12 V system scaled to another system. */
    static Voltage scaled(Voltage atTwelve, Voltage system) {
        return Voltage.ofMillivolts(
                Math.round(atTwelve.millivolts() * (system.millivolts() / 12_000.0)));
    }
}
