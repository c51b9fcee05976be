package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.BundleFactor;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.Derating;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;

/**
 * What the wires carry and may carry in one scenario.
 *
 * <p>An allowed current is {@link Derating#left} of {@link #derating}; it is worked out without the words of its steps, which cost more
 * than the figures. A place colder than that of the rating is not counted as a gain: the tables of vehicle cable do not say at which
 * temperature they hold.
 */
final class InScenario {

    private final String scenario;
    private final ElectricalTables tables;
    private final CurrentRules rules;
    private final AllowedCurrents wires;
    private final long[] currents;
    private final int[] loaded;
    private final Temperature ambient;
    private final double ambientFactor;

    InScenario(
            String scenario,
            ElectricalTables tables,
            CurrentRules rules,
            AllowedCurrents wires,
            long[] currents,
            int[] loaded,
            Temperature ambient) {
        this.scenario = scenario;
        this.tables = tables;
        this.rules = rules;
        this.wires = wires;
        this.currents = currents;
        this.loaded = loaded;
        this.ambient = ambient;
        this.ambientFactor =
                Math.min(
                        1,
                        Derating.of(Current.ZERO)
                                .atAmbient(rules.insulation().value(), ambient)
                                .steps()
                                .getFirst()
                                .factor()
                                .toDouble());
    }

    String scenario() {
        return scenario;
    }

    /** The wire's number, or -1 where this loom has no such wire. */
    int find(String wire) {
        return wires.find(wire);
    }

    /** What the wire carries, in either direction. */
    Current current(int wire) {
        return Current.ofMilliamperes(currents[wire]);
    }

    /** What it may carry. */
    Current allowed(int wire) {
        return allowed(wire, wires.size(wire).rating());
    }

    /** What it might carry with no other wire beside it, in as warm a place. */
    Current alone(int wire) {
        return Current.roundedFromAmperes(
                wires.size(wire).rating().toDoubleAmperes() * ambientFactor);
    }

    /** What it might carry if it had that rating. */
    Current allowed(int wire, Current rating) {
        return Current.roundedFromAmperes(
                rating.toDoubleAmperes() * bundle(wire).factor().toDouble() * ambientFactor);
    }

    boolean isOver(int wire) {
        return current(wire).compareTo(allowed(wire)) > 0;
    }

    /** Current over what is allowed; infinite where nothing is. */
    double use(int wire) {
        double allowed = allowed(wire).toDoubleAmperes();
        double current = current(wire).toDoubleAmperes();
        return current == 0 ? 0 : current / allowed;
    }

    /** How the allowed current comes about. */
    Derating derating(int wire) {
        Derating bundled = Derating.of(wires.size(wire).rating()).inBundle(bundle(wire));
        return ambientFactor < 1 ? bundled.atAmbient(rules.insulation().value(), ambient) : bundled;
    }

    int loadedWires(int wire) {
        return loaded[wire];
    }

    private BundleFactor bundle(int wire) {
        return tables.bundleFactorFor(loaded[wire]);
    }
}
