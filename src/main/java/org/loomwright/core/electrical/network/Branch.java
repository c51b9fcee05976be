package org.loomwright.core.electrical.network;

import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Voltage;

/**
 * A piece of a net between two nodes. Its current counts from {@code from} to {@code to}; its electromotive force drives current that
 * way: V(from) - V(to) + emf = I R.
 *
 * @param id unique in the net
 * @param from the node where its current enters
 * @param to the node where its current leaves; the same node makes a loop of its own
 * @param resistance not negative; a branch with an electromotive force has more than zero
 * @param emf electromotive force, zero for a mere resistor
 */
public record Branch(String id, String from, String to, Resistance resistance, Voltage emf) {

    public Branch {
        if (resistance.compareTo(Resistance.ZERO) < 0) {
            throw new IllegalArgumentException(
                    "branch %s cannot have a resistance of %s".formatted(id, resistance));
        }
        if (!emf.equals(Voltage.ZERO) && resistance.compareTo(Network.LEAST) < 0) {
            throw new IllegalArgumentException(
                    "source %s needs a resistance of at least %s, has %s"
                            .formatted(id, Network.LEAST, resistance));
        }
    }

    /** @return a resistor */
    public static Branch resistor(String id, String from, String to, Resistance resistance) {
        return new Branch(id, from, to, resistance, Voltage.ZERO);
    }

    /** @return a connection without resistance */
    public static Branch ideal(String id, String from, String to) {
        return resistor(id, from, to, Resistance.ZERO);
    }

    boolean isIdeal() {
        return resistance.compareTo(Network.LEAST) < 0;
    }

    double siemens() {
        return 1 / resistance.toDoubleOhms();
    }
}
