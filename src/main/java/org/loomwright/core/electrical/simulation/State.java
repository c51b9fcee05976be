package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.simulation.ElectricalSettings.GeneratorOutput;
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
        /** It turns fast enough, but no current in its field makes it give anything. */
        UNEXCITED,
        /** A dynamo's voltage rises out of what magnetism is left; whether it stays depends on its field. */
        BUILDING,
        /** It keeps its voltage. */
        REGULATING,
        /** It gives all that it can and its voltage falls. */
        LIMITED;

        boolean gives() {
            return this == BUILDING || this == REGULATING || this == LIMITED;
        }
    }

    State {
        pulledIn = Set.copyOf(pulledIn);
        generators = Map.copyOf(generators);
    }

    boolean generates() {
        return generators.values().stream().anyMatch(Mode::gives);
    }

    /** Whether it gives and nothing is left to wait for. */
    boolean isSteady(Placed generator) {
        Mode mode = modeOf(generator);
        return mode == Mode.REGULATING || mode == Mode.LIMITED;
    }

    Mode modeOf(Placed generator) {
        return generators.getOrDefault(generator.device().id(), Mode.STANDING);
    }

    /** The same with every generator that works giving all that it can. */
    State atFullOutput() {
        Map<String, Mode> full = new HashMap<>(generators);
        full.replaceAll((device, mode) -> mode.gives() ? Mode.LIMITED : mode);
        return new State(pulledIn, full);
    }

    /** What the generator can give beside the current of its own field while the engine runs like that. */
    static Current outputOf(Placed generator, Scenario.Engine engine, ElectricalSettings settings) {
        GeneratorOutput output = settings.outputOf(generator.device());
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
